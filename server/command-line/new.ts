/** `tribrach new`: a first session with the questions that a careful surveyor answers. */
import type { Command } from 'commander';
import { newSession } from '../record/new-session.ts';
import { CannotRun, type Io } from './io.ts';
import { STANDARD_INPUT } from './session-paths.ts';
import { writeNewFile } from './write-new.ts';

export function register(program: Command, io: Io): void {
  program
    .command('new')
    .description('write a first session: the questions of the day, each with a ? to replace')
    .argument('<file>', 'where to write it (it must not be there yet), or - for standard output')
    .option('--date <date>', 'the day of the session, as YYYY-MM-DD')
    .action((path: string, { date }: { date?: string }) => {
      if (date !== undefined && !/^\d{4}-\d{2}-\d{2}$/.test(date))
        throw new CannotRun([`--date ${date} is not written as YYYY-MM-DD`]);
      const text = newSession(date ?? null);
      if (path === STANDARD_INPUT) return io.print(text);
      writeNewFile(path, text);
      io.print(
        `${path} is written. Answer its questions from the top down, then run: tribrach check ${path}\n`,
      );
    });
}
