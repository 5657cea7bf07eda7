/** `tribrach check`: what is wrong in sessions, what follows from it, and whether the day is proved. */
import { dirname } from 'node:path';
import { type Command, Option } from 'commander';
import { PROOF_CLASSES, type RequiredProof } from '../derive/trust/trust.ts';
import { SEVERITIES, type Severity } from '../findings/finding.ts';
import { examineArchive } from './archive.ts';
import { changedSince } from './changed-since.ts';
import { answer, CHECK_FORMATS, type CheckFormat } from './check-answer.ts';
import { diskFiles, rootOf } from './disk-files.ts';
import { examine, type Examined, type View } from './examine.ts';
import type { Io } from './io.ts';
import { sessionPaths, STANDARD_INPUT } from './session-paths.ts';
import { readTexts, requireFolder, type SessionOptions } from './sessions.ts';
import { partText, shardIn, shareOf, type Shard } from './shard.ts';

interface Options extends SessionOptions {
  readonly severity: Severity;
  readonly require?: RequiredProof;
  readonly format: CheckFormat;
  readonly changedSince?: string;
  readonly shard?: Shard;
  readonly cache: boolean;
  readonly hints?: boolean;
}

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
    .addOption(new Option('--format <format>', 'how to answer').choices(CHECK_FORMATS).default('text'))
    .option(
      '--changed-since <revision>',
      'only sessions that differ from this git revision, or draw on a file that does',
    )
    .addOption(
      new Option(
        '--shard <share>',
        'examine one share of the sessions, for example 3/16, and print a part for tribrach join',
      )
        .argParser(shardIn)
        .conflicts('format'),
    )
    .option('--hints', 'tell each hint and each answer that is still open, and not only how many')
    .option('--no-cache', 'examine every session anew, and keep no answers for the next time')
    .option('--root <folder>', 'files that a session names are read below this folder only')
    .action((paths: string[], options: Options) => run(paths, options, io));
}

async function run(paths: readonly string[], options: Options, io: Io): Promise<void> {
  const { root, severity, shard, require = null, hints = false } = options;
  if (root !== undefined) requireFolder(root);
  const asked = askedPaths(paths, options);
  if (!shard) return answer(await examineAll(asked, options, io), options.format, { severity, require }, io);
  const examined = await examineAll(shareOf(asked, shard), options, io);
  io.print(partText(shard, asked, { severity, require, hints }, examined), 'json');
}

function askedPaths(paths: readonly string[], { changedSince: since, root }: Options): readonly string[] {
  // The last session of a folder may have been deleted since.
  const all = sessionPaths(paths, since !== undefined);
  return since === undefined ? all : changedSince(since, all, root);
}

/** From this number on it pays to use every core, and to keep the answers for the next time. */
const MANY = 32;

async function examineAll(asked: readonly string[], options: Options, io: Io): Promise<Examined[]> {
  const { root, shard } = options;
  const view: View = {
    format: shard ? 'part' : options.format,
    colours: io.colours && !shard,
    hints: options.hints === true,
    width: io.width,
    require: options.require ?? null,
  };
  if (asked.length >= MANY && !asked.includes(STANDARD_INPUT))
    return examineArchive(
      asked,
      { ...(root === undefined ? {} : { root }), view, keep: options.cache, share: shard ?? null },
      io,
    );
  const texts = await readTexts(asked, io);
  return texts.map(({ path, text }) =>
    examine(path, text, diskFiles(root ?? rootOf(path === STANDARD_INPUT ? '.' : dirname(path)), '.'), view),
  );
}
