/** `tribrach seal`: prints the review line for a reviewer to place; it writes nothing itself. */
import { dirname } from 'node:path';
import type { Command } from 'commander';
import { reviewLine } from '../record/notes/review-line.ts';
import { diskFiles, rootOf } from './disk-files.ts';
import { CannotRun, type Io } from './io.ts';
import { inspectSessions, requireDay, shownPath, type SessionOptions } from './sessions.ts';

interface Options extends SessionOptions {
  readonly by?: string;
  readonly date?: string;
}

export function register(program: Command, io: Io): void {
  program
    .command('seal')
    .description('print the review line for a session as it stands, for the reviewer to place in it')
    .argument('<session>', 'a session file')
    .option('--by <name>', 'who reviewed it', 'NAME')
    .option('--date <date>', 'when it was reviewed, as YYYY-MM-DD (default: "DATE")')
    .option('--root <folder>', 'files that a session names are read below this folder only')
    .addHelpText(
      'after',
      '\nA seal shows that something was changed after the review. It proves nobody’s identity:\nsign the commit with git for that (git commit -S).',
    )
    .action((path: string, options: Options) => run(path, options, io));
}

async function run(path: string, options: Options, io: Io): Promise<void> {
  requireDay(options.date);
  const inspected = await inspectSessions([path], options, io);
  if (inspected.length !== 1) throw new CannotRun(['a review is of one session; name one file']);
  for (const { session, path: shown } of inspected) {
    const files = diskFiles(options.root ?? rootOf(dirname(shown)), '.');
    const line = reviewLine(session, files, options.by ?? 'NAME', options.date ?? 'DATE');
    if (typeof line !== 'string')
      throw new CannotRun(line.unsealed.map((reason) => `${shownPath(shown)} cannot be sealed: ${reason}`));
    io.print(line);
  }
}
