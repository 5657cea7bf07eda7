/** The language server can be restarted, and goes on where it was. */
import { commands, languages } from 'vscode';
import { eventually, openSession, type Tests } from './session.ts';

export const serverTests: Tests = {
  'findings come back after a restart': async () => {
    const { document } = await openSession();
    const found = (): true | undefined => languages.getDiagnostics(document.uri).length > 0 || undefined;
    await eventually('findings', found);
    await commands.executeCommand('tribrach.restartServer');
    await eventually('findings after the restart', found);
  },
};
