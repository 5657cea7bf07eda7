/** Derived values stand at line ends and in hovers, follow the typing, and can be switched off. */
import {
  commands,
  ConfigurationTarget,
  MarkdownString,
  Range,
  workspace,
  type Hover,
  type InlayHint,
  type TextDocument,
} from 'vscode';
import expected from '../expected.json';
import { eventually, openSession, placeOf, replace, type Tests } from './session.ts';

const { inlay, edit, hover } = expected;

export const inlayTests: Tests = {
  'a derived height stands at a line end': async () => {
    const { document } = await openSession();
    await eventually(`an inlay with ${inlay.says}`, () => shows(document, inlay.says));
  },

  'the derived height follows the typing': async () => {
    const editor = await openSession();
    await eventually(`an inlay with ${inlay.says}`, () => shows(editor.document, inlay.says));
    await replace(editor, edit.replace, edit.by);
    await eventually(`an inlay with ${edit.inlaySays}`, () => shows(editor.document, edit.inlaySays));
  },

  'heights at line ends can be switched off and on': async () => {
    const { document } = await openSession();
    await eventually(`an inlay with ${inlay.says}`, () => shows(document, inlay.says));
    const settings = workspace.getConfiguration('tribrach.inlays');
    await settings.update('heights', false, ConfigurationTarget.Global);
    try {
      await eventually('the heights to leave', async () =>
        (await shows(document, inlay.says)) ? undefined : true,
      );
    } finally {
      await settings.update('heights', undefined, ConfigurationTarget.Global);
    }
    await eventually('the heights to come back', () => shows(document, inlay.says));
  },

  'a hover tells the derivation': async () => {
    const { document } = await openSession();
    const place = placeOf(document, hover.at).start.translate(0, 1);
    await eventually(`a hover with ${hover.says}`, async () => {
      const hovers = await commands.executeCommand<Hover[]>(
        'vscode.executeHoverProvider',
        document.uri,
        place,
      );
      return textOf(hovers).includes(hover.says) || undefined;
    });
  },
};

async function shows(document: TextDocument, text: string): Promise<true | undefined> {
  const everything = new Range(0, 0, document.lineCount, 0);
  const inlays = await commands.executeCommand<InlayHint[]>(
    'vscode.executeInlayHintProvider',
    document.uri,
    everything,
  );
  const labels = inlays.map(({ label }) =>
    typeof label === 'string' ? label : label.map(({ value }) => value).join(''),
  );
  return labels.some((label) => label.includes(text)) || undefined;
}

function textOf(hovers: readonly Hover[]): string {
  return hovers
    .flatMap(({ contents }) => contents)
    .map((part) =>
      typeof part === 'string' ? part : part instanceof MarkdownString ? part.value : part.value,
    )
    .join('\n');
}
