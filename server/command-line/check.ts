/** `tribrach check`: what is wrong in sessions, what follows from it, and whether the day is proved. */
import { type Command, Option } from 'commander';
import { SEVERITIES, type Severity } from '../findings/finding.ts';
import manifest from '../../package.json' with { type: 'json' };
import { findingsJson } from '../record/findings-json.ts';
import { findingsSarif } from '../record/findings-sarif.ts';
import { PROOF_CLASSES, type RequiredProof } from '../derive/trust.ts';
import { shortfalls } from '../record/verdict.ts';
import { findingsText } from './check-text.ts';
import type { Io } from './io.ts';
import { inspectSessions, shownPath, type Inspected, type SessionOptions } from './sessions.ts';

interface Options extends SessionOptions {
  readonly severity: Severity;
  readonly require?: RequiredProof;
  readonly format: keyof typeof ANSWERS;
}

const ANSWERS = {
  text: findingsText,
  json: (inspected: readonly Inspected[]) => `${JSON.stringify(findingsJson(inspected), null, 2)}\n`,
  sarif: (inspected: readonly Inspected[]) =>
    `${JSON.stringify(findingsSarif(inspected, manifest.version), null, 2)}\n`,
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
      new Option(
        '--require <proof>',
        'exit 1 when the day or one of its points is proved less than this',
      ).choices(Object.keys(PROOF_CLASSES)),
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
  const missing = options.require ? missingProof(inspected, options.require) : [];
  if (missing.length > 0) io.exitWith(1);
  io.complain(missing.map((sentence) => `tribrach: ${sentence}\n`).join(''));
}

const missingProof = (inspected: readonly Inspected[], required: RequiredProof) =>
  inspected.flatMap((session) =>
    shortfalls(session, required).map(
      (shortfall) => `${shownPath(session.path)}: ${shortfall}, and ${required} is required`,
    ),
  );
