/** `tribrach serve`: the language server, for any editor that speaks the protocol. */
import { type Command, Option } from 'commander';
import { editorDisk } from './editor-disk.ts';
import { CannotRun } from './io.ts';

export function register(program: Command): void {
  program
    .command('serve')
    .description('answer an editor by the Language Server Protocol')
    .option('--stdio', 'by standard input and output')
    // Some clients say who they are; the connection itself ends when they do.
    .addOption(new Option('--clientProcessId <number>').hideHelp())
    .action(async ({ stdio }: { readonly stdio?: boolean }) => {
      if (!stdio) throw new CannotRun(['say how the editor is connected: tribrach serve --stdio']);
      // Loaded here alone, so that the other commands start without it.
      const { serveStdio } = await import('../protocol/serve.ts');
      serveStdio(editorDisk);
    });
}
