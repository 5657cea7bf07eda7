/** The packaged extension is the one at work, and it knows a session file by its ending. */
import { commands, extensions } from 'vscode';
import { eventually, openSession, same, type Tests } from './session.ts';

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

  'every command of the manifest is there': async () => {
    const known = await commands.getCommands(true);
    const manifest = extensions.getExtension('tribrach.tribrach')?.packageJSON as {
      contributes: { commands: readonly { command: string }[] };
    };
    const missing = manifest.contributes.commands.filter(({ command }) => !known.includes(command));
    same('commands that nobody registered', missing.map(({ command }) => command).join(), '');
  },
};
