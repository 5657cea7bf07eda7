/** The editor helps the hand: indents under entries, comments lines, leaves minute marks alone, offers whole entries. */
import { commands, Selection, type CompletionList, type TextEditor } from 'vscode';
import { eventually, openSession, same, type Tests } from './session.ts';

export const writingTests: Tests = {
  'a new line under an entry is indented, and an entry word goes back to the first column': async () => {
    const editor = await emptied();
    await type('mark A', '\n', 'found       intact', '\n', 'setup B on A');
    same('the text', editor.document.getText(), 'mark A\n  found       intact\nsetup B on A');
  },

  'a point and a ground grid indent what stands under them': async () => {
    const editor = await emptied();
    await type('ground G', '\n', 'scale 1.0001', '\n', 'point K at 09:14', '\n', 'remark "x"');
    same(
      'the text',
      editor.document.getText().replace('""', '"'),
      'ground G\n  scale 1.0001\npoint K at 09:14\n  remark "x"',
    );
  },

  'a minute mark stays alone and a quotation is closed': async () => {
    const editor = await emptied();
    await type(`41°09'`);
    same('after a minute mark', editor.document.getText(), `41°09'`);
    await type('08"');
    same('after a second mark', editor.document.getText(), `41°09'08"`);
    await type(' "');
    same('after a quotation mark', editor.document.getText(), `41°09'08" ""`);
  },

  'a line is commented with a hash': async () => {
    const editor = await emptied();
    await type('found intact');
    await commands.executeCommand('editor.action.commentLine');
    same('the text', editor.document.getText(), '# found intact');
  },

  'whole entries are offered as snippets': async () => {
    const { document } = await emptied();
    await type('hazar');
    await eventually('the snippet of a hazard', async () => {
      const offers = await commands.executeCommand<CompletionList>(
        'vscode.executeCompletionItemProvider',
        document.uri,
        document.positionAt(5),
      );
      return (
        offers.items.some(({ label }) => (typeof label === 'string' ? label : label.label) === 'hazard') ||
        undefined
      );
    });
  },
};

async function emptied(): Promise<TextEditor> {
  const editor = await openSession();
  const all = editor.document.validateRange(new Selection(0, 0, editor.document.lineCount, 0));
  await editor.edit((edit) => edit.delete(all));
  return editor;
}

/** Types key by key, as a fast hand does: the editor indents only where colouring has kept up. */
async function type(...texts: readonly string[]): Promise<void> {
  for (const key of texts.flatMap((text) => [...text])) {
    await commands.executeCommand('type', { text: key });
    await new Promise<void>((resolve) => setTimeout(resolve, 30));
  }
}
