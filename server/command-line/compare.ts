/** `tribrach compare`: what changed in results between two versions of a session, also as a diff driver for git. */
import { dirname } from 'node:path';
import { type Command, Option } from 'commander';
import { openDocument } from '../../grammar/document.ts';
import { inspect, type Inspection } from '../inspect.ts';
import { compareInspections, isSame, type Comparison } from '../record/compare/compare.ts';
import { comparisonMarkdown, comparisonText } from '../record/compare/text.ts';
import { diskChunks, diskFiles, rootOf } from './disk-files.ts';
import { CannotRun, type Io } from './io.ts';
import { readTexts } from './sessions.ts';
import { harmless } from './terminal-text.ts';

interface Options {
  readonly root?: string;
  readonly git?: boolean;
  readonly format: keyof typeof ANSWERS;
}

const ANSWERS = {
  text: (title: string, comparison: Comparison) => harmlessLines(comparisonText(title, comparison)),
  markdown: comparisonMarkdown,
  json: (title: string, comparison: Comparison) => `${JSON.stringify({ title, ...comparison }, null, 2)}\n`,
} satisfies Record<string, (title: string, comparison: Comparison) => string>;

const kindOf = ({ format }: Options) => (format === 'json' ? 'json' : 'text');

const harmlessLines = (text: string) => text.split('\n').map(harmless).join('\n');

export function register(program: Command, io: Io): void {
  program
    .command('compare')
    .description('say what changed in results between two versions of a session; exit 1 where something did')
    .argument('<paths...>', 'the old and the new session file')
    .addOption(new Option('--format <format>', 'how to answer').choices(Object.keys(ANSWERS)).default('text'))
    .option('--git', "take git's seven words for a diff driver, and exit 0 whatever changed")
    .option('--root <folder>', 'files that a session names are read below this folder only')
    .action((paths: string[], options: Options) =>
      options.git ? forGit(paths, options, io) : run(paths, options, io),
    );
}

async function run(paths: readonly string[], options: Options, io: Io): Promise<void> {
  const [old, now, ...rest] = paths;
  if (old === undefined || now === undefined || rest.length > 0)
    throw new CannotRun(['compare takes two files, the old version and the new one']);
  const comparison = compareInspections(
    await versionAt(old, old, options, io),
    await versionAt(now, now, options, io),
  );
  if (isSame(comparison)) {
    if (options.format === 'json') io.print(ANSWERS.json(`${old} → ${now}`, comparison), 'json');
    return;
  }
  io.print(ANSWERS[options.format](`${old} → ${now}`, comparison), kindOf(options));
  io.exitWith(1);
}

/**
 * git calls with: path, old file, old hash, old mode, new file, new hash, new mode; a file that is not there is /dev/null.
 * Behind them stands the new path of a file that was renamed. A file that is still to be merged comes with its path alone.
 */
async function forGit(words: readonly string[], options: Options, io: Io): Promise<void> {
  const [path, old, , , now, , , renamed] = words;
  if (path !== undefined && words.length === 1) {
    io.print(`${path}: not merged yet\n`);
    return;
  }
  if (path === undefined || old === undefined || now === undefined)
    throw new CannotRun([
      'with --git, compare is called by git: path, old file, hash, mode, new file, hash, mode',
    ]);
  // The old version lies in a temporary folder; what it names lies beside the session all the same.
  const comparison = compareInspections(
    await versionAt(old, path, options, io),
    await versionAt(now, renamed ?? path, options, io),
  );
  const title = renamed === undefined ? path : `${path} → ${renamed}`;
  const answer = ANSWERS[options.format](title, comparison);
  io.print(answer === '' ? `${harmless(title)}: the text changed, no result did\n` : answer, kindOf(options));
}

async function versionAt(file: string, path: string, { root }: Options, io: Io): Promise<Inspection> {
  const [read] = file === '/dev/null' ? [{ text: '' }] : await readTexts([file], io);
  const limit = root ?? rootOf(dirname(path));
  const files = { ...diskFiles(limit, '.'), chunks: diskChunks(limit, '.') };
  return inspect(openDocument(path, read?.text ?? ''), files);
}
