/** `tribrach format`: prints sessions with their details aligned, writes them in place, or says which would change. */
import type { Command } from 'commander';
import { format } from '../../grammar/printer.ts';
import { CannotRun, type Io } from './io.ts';
import { replaceFile } from './writing.ts';
import { sessionPaths, STANDARD_INPUT } from './session-paths.ts';
import { readTexts, shownPath } from './sessions.ts';

interface Options {
  readonly write?: boolean;
  readonly check?: boolean;
}

export function register(program: Command, io: Io): void {
  program
    .command('format')
    .description('align the details of sessions; only blanks change, never a value, a digit or a comment')
    .argument('<paths...>', 'session files, folders, or - for standard input')
    .option('--write', 'write the formatted text back, in one step; an unchanged file is not touched')
    .option('--check', 'print which files would change, and exit 1 if any would')
    .action((paths: string[], options: Options) => run(paths, options, io));
}

async function run(paths: readonly string[], { write, check }: Options, io: Io): Promise<void> {
  if (write && check) throw new CannotRun(['--write and --check cannot be asked for together']);
  const texts = await readTexts(sessionPaths(paths), io);
  const results = texts.map(({ path, text }) => ({ path, text, formatted: format(text) }));
  const changed = results.filter(({ text, formatted }) => text !== formatted);
  if (check) {
    io.print(changed.map(({ path }) => `${shownPath(path)} would change\n`).join(''));
    if (changed.length > 0) io.exitWith(1);
  } else if (write) {
    if (texts.some(({ path }) => path === STANDARD_INPUT))
      throw new CannotRun(['standard input cannot be written back; leave out --write']);
    for (const { path, formatted } of changed) replaceFile(path, formatted);
    io.print(changed.map(({ path }) => `${path} formatted\n`).join(''));
  } else io.print(results.map(({ formatted }) => formatted).join(''), 'file');
}
