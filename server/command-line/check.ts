/** `tribrach check`: what is wrong in sessions, what follows from it, and whether the day is proved. */
import { dirname } from 'node:path';
import { type Command, Option } from 'commander';
import manifest from '../../package.json' with { type: 'json' };
import { PROOF_CLASSES, type RequiredProof } from '../derive/trust/trust.ts';
import { SEVERITIES, type Severity } from '../findings/finding.ts';
import { mergedFindings } from '../record/machine/findings-json.ts';
import { sarifLog } from '../record/machine/findings-sarif.ts';
import { examineArchive } from './archive.ts';
import { changedSince } from './changed-since.ts';
import { totalText } from './check-text.ts';
import { diskFiles, rootOf } from './disk-files.ts';
import { examine, type Examined, type View } from './examine.ts';
import type { Io } from './io.ts';
import { sessionPaths, STANDARD_INPUT } from './session-paths.ts';
import { readTexts, requireFolder, shownPath, type SessionOptions } from './sessions.ts';

interface Options extends SessionOptions {
  readonly severity: Severity;
  readonly require?: RequiredProof;
  readonly format: View['format'];
  readonly changedSince?: string;
  readonly cache: boolean;
  readonly hints?: boolean;
}

const ANSWERS: Readonly<Record<View['format'], (examined: readonly Examined[]) => string>> = {
  text: (examined) =>
    examined.map(({ text }) => text).join('\n') +
    (examined.length > 1 ? `\n${totalText(examined.map(({ counts }) => counts))}\n` : ''),
  json: (examined) =>
    `${JSON.stringify(mergedFindings(examined.flatMap(({ json }) => json ?? [])), null, 2)}\n`,
  sarif: (examined) =>
    `${JSON.stringify(
      sarifLog(
        examined.flatMap(({ sarif }) => sarif),
        manifest.version,
      ),
      null,
      2,
    )}\n`,
};

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
        'exit 1 when a day, or any point of it, is proved less than this',
      ).choices(Object.keys(PROOF_CLASSES)),
    )
    .addOption(new Option('--format <format>', 'how to answer').choices(Object.keys(ANSWERS)).default('text'))
    .option(
      '--changed-since <revision>',
      'only sessions that differ from this git revision, or draw on a file that does',
    )
    .option('--hints', 'tell each hint and each answer that is still open, and not only how many')
    .option('--no-cache', 'examine every session anew, and keep no answers for the next time')
    .option('--root <folder>', 'files that a session names are read below this folder only')
    .action((paths: string[], options: Options) => run(paths, options, io));
}

async function run(paths: readonly string[], options: Options, io: Io): Promise<void> {
  const examined = await examineAll(paths, options, io);
  io.print(ANSWERS[options.format](examined), options.format === 'text' ? 'text' : 'json');
  const counted = SEVERITIES.slice(0, SEVERITIES.indexOf(options.severity) + 1);
  if (examined.some(({ counts }) => counted.some((severity) => counts[severity] > 0))) io.exitWith(1);
  const missing = examined.flatMap(({ path, shortfalls }) =>
    shortfalls.map(
      (shortfall) => `${shownPath(path)}: ${shortfall}, and ${options.require ?? ''} is required`,
    ),
  );
  if (missing.length > 0) io.exitWith(1);
  io.complain(missing.map((sentence) => `tribrach: ${sentence}\n`).join(''));
}

/** From this number on it pays to use every core, and to keep the answers for the next time. */
const MANY = 32;

async function examineAll(paths: readonly string[], options: Options, io: Io): Promise<Examined[]> {
  const { root } = options;
  if (root !== undefined) requireFolder(root);
  const view: View = {
    format: options.format,
    colours: io.colours,
    hints: options.hints === true,
    width: io.width,
    require: options.require ?? null,
  };
  const since = options.changedSince;
  // The last session of a folder may have been deleted since.
  const all = sessionPaths(paths, since !== undefined);
  const asked = since === undefined ? all : changedSince(since, all, root);
  if (asked.length >= MANY && !asked.includes(STANDARD_INPUT))
    return examineArchive(asked, { ...(root === undefined ? {} : { root }), view, keep: options.cache }, io);
  const texts = await readTexts(asked, io);
  return texts.map(({ path, text }) =>
    examine(path, text, diskFiles(root ?? rootOf(path === STANDARD_INPUT ? '.' : dirname(path)), '.'), view),
  );
}
