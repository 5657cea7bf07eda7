/** `tribrach new`: a first session with the questions that a careful surveyor answers. */
import type { Command } from 'commander';
import { newSession } from '../record/notes/new-session.ts';
import type { Io } from './io.ts';
import { STANDARD_INPUT } from './session-paths.ts';
import { requireDay } from './sessions.ts';
import { writeNewFile } from './writing.ts';

export function register(program: Command, io: Io): void {
  program
    .command('new')
    .description('write a first session: the questions of the day, each with a ? to replace')
    .argument('<file>', 'where to write it (it must not be there yet), or - for standard output')
    .option('--date <date>', 'the day of the session, as YYYY-MM-DD')
    .option('--name <name>', 'the name of the job')
    .action((path: string, { date, name }: { date?: string; name?: string }) => {
      requireDay(date);
      const text = newSession(date ?? null, name ?? null);
      if (path === STANDARD_INPUT) return io.print(text, 'file');
      writeNewFile(path, text);
      io.print(
        `${path} is written. Answer its questions from the top down, then run: tribrach check ${path}\n`,
      );
    });
}
