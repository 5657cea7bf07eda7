/** `tribrach report`: the record of sessions as one page that needs nothing but itself, or as Markdown for a pull request. */
import { type Command, Option } from 'commander';
import type { Inspection } from '../inspect.ts';
import { REPORT_MARK, reportPage } from '../record/report/report.ts';
import { reportMarkdown } from '../record/report/markdown.ts';
import type { Io } from './io.ts';
import { inspectSessions, tellFaults, type SessionOptions } from './sessions.ts';
import { evidenceOf, writeFile } from './writing.ts';

interface Options extends SessionOptions {
  readonly out?: string;
  readonly force?: boolean;
  readonly format: keyof typeof ANSWERS;
}

const ANSWERS = {
  html: reportPage,
  markdown: reportMarkdown,
} satisfies Record<string, (inspections: readonly Inspection[]) => string>;

export function register(program: Command, io: Io): void {
  program
    .command('report')
    .description(
      'write the record of sessions: verdict, drawings, findings, and every number with its derivation',
    )
    .argument('<paths...>', 'session files, folders, or - for standard input')
    .option('--out <file>', 'write to this file, whole or not at all; else to standard output')
    .option(
      '--force',
      'replace a file that is there and is no report; never one that was read or that a session names',
    )
    .addOption(new Option('--format <format>', 'how to answer').choices(Object.keys(ANSWERS)).default('html'))
    .option('--root <folder>', 'files that a session names are read below this folder only')
    .action((paths: string[], options: Options) => run(paths, options, io));
}

async function run(paths: readonly string[], options: Options, io: Io): Promise<void> {
  const inspected = await inspectSessions(paths, options, io);
  tellFaults(inspected, io);
  const text = ANSWERS[options.format](inspected);
  if (options.out === undefined) return io.print(text);
  writeFile(options.out, text, {
    evidence: inspected.flatMap(({ session }) => evidenceOf(session)),
    force: options.force ?? false,
    isOwn: (head) => head.includes(REPORT_MARK),
  });
}
