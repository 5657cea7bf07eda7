/** `tribrach check`: what is wrong in sessions, what follows from it, and whether the day is proved. */
import { type Command, Option } from 'commander';
import { SEVERITIES, type Severity } from '../findings/finding.ts';
import { findingsJson } from '../record/findings-json.ts';
import { verdictOf } from '../record/verdict.ts';
import { findingsText } from './check-text.ts';
import type { Io } from './io.ts';
import { inspectSessions, shownPath, type Inspected, type SessionOptions } from './sessions.ts';

interface Options extends SessionOptions {
  readonly severity: Severity;
  readonly require?: 'bracketed' | 'held' | 'checked';
  readonly format: keyof typeof ANSWERS;
}

const ANSWERS = {
  text: findingsText,
  json: (inspected: readonly Inspected[]) => `${JSON.stringify(findingsJson(inspected), null, 2)}\n`,
} satisfies Record<string, (inspected: readonly Inspected[], io: Io) => string>;

export function register(program: Command, io: Io): void {
  program
    .command('check')
    .description('say what is wrong in sessions, what follows from it, and whether the day is proved')
    .argument('<paths...>', 'session files, folders, or - for standard input')
    .addOption(
      new Option('--severity <severity>', 'exit 1 for findings of this severity or a higher one')
        .choices(SEVERITIES)
        .default('error'),
    )
    .addOption(
      new Option('--require <proof>', 'exit 1 when a day is proved less than this').choices([
        'bracketed',
        'held',
        'checked',
      ]),
    )
    .addOption(new Option('--format <format>', 'how to answer').choices(Object.keys(ANSWERS)).default('text'))
    .option('--root <folder>', 'files that a session names are read below this folder only')
    .action((paths: string[], options: Options) => run(paths, options, io));
}

async function run(paths: readonly string[], options: Options, io: Io): Promise<void> {
  const inspected = await inspectSessions(paths, options, io);
  io.print(ANSWERS[options.format](inspected, io));
  const counts = SEVERITIES.slice(0, SEVERITIES.indexOf(options.severity) + 1);
  if (inspected.some(({ findings }) => findings.some(({ severity }) => counts.includes(severity))))
    io.exitWith(1);
  for (const session of options.require ? inspected.filter((one) => !verdictOf(one).checked) : []) {
    io.complain(`tribrach: ${shownPath(session.path)} is not ${options.require ?? ''}\n`);
    io.exitWith(1);
  }
}
