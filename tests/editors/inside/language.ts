/** The packaged extension is the one at work, and it knows a session file by its ending. */
import { commands, extensions, Position, type CodeAction, type CompletionList } from 'vscode';
import { eventually, openSession, placeOf, revert, same, type Tests } from './session.ts';

export const languageTests: Tests = {
  'a file that ends in .trib is a session': async () => {
    const editor = await openSession();
    same('the language', editor.document.languageId, 'tribrach');
  },

  'opening a session starts the installed extension': async () => {
    await openSession();
    const extension = extensions.getExtension('tribrach.tribrach');
    if (extension === undefined) throw new Error('the extension is not installed');
    await eventually('the extension to become active', () => extension.isActive || undefined);
  },

  'a question has an action that leads to it, and writes nothing': async () => {
    const editor = await openSession();
    const before = editor.document.getText();
    await editor.edit((edit) => edit.insert(new Position(0, 0), 'mark Q\n  height      ?\n'));
    const place = placeOf(editor.document, '?');
    const action = await eventually('the action', async () => {
      const actions = await commands.executeCommand<CodeAction[]>(
        'vscode.executeCodeActionProvider',
        editor.document.uri,
        place,
      );
      return actions.find(({ title }) => title === 'Answer this question');
    });
    same('edits', action.edit, undefined);
    await commands.executeCommand(
      action.command?.command ?? '',
      ...((action.command?.arguments ?? []) as unknown[]),
    );
    await eventually('the question to be selected', () => editor.selection.isEqual(place) || undefined);
    same('the rest', editor.document.getText().endsWith(before), true);
    await revert();
  },

  'paths are offered behind the words that name a file': async () => {
    const editor = await openSession();
    const labels = async (typed: string) => {
      await editor.edit((edit) => edit.insert(new Position(0, 0), `${typed}\n`));
      const { items } = await commands.executeCommand<CompletionList>(
        'vscode.executeCompletionItemProvider',
        editor.document.uri,
        new Position(0, typed.length),
      );
      return items.map(({ label }) => (typeof label === 'string' ? label : label.label));
    };
    same('a folder', (await labels('use "sam')).includes('samples/'), true);
    const inside = await labels('use "samples/');
    same('a session', inside.includes('marks.trib'), true);
    same('points', inside.includes('pickup.csv'), false);
    await revert();
  },

  'every command of the manifest is there': async () => {
    const known = await commands.getCommands(true);
    const manifest = extensions.getExtension('tribrach.tribrach')?.packageJSON as {
      contributes: { commands: readonly { command: string }[] };
    };
    const missing = manifest.contributes.commands.filter(({ command }) => !known.includes(command));
    same('commands that nobody registered', missing.map(({ command }) => command).join(), '');
  },
};
