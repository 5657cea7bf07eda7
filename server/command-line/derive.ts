/** `tribrach derive`: every value that follows from sessions, with its uncertainty, or the whole story of one. */
import { type Command, Option } from 'commander';
import { listValues } from '../derive/listing.ts';
import { explainAll } from '../quantities/explain.ts';
import { isHole } from '../quantities/value.ts';
import { tellPlace } from '../record/tell-place.ts';
import { valuesJson } from '../record/values-json.ts';
import { valuesText } from './derive-text.ts';
import { CannotRun, type Io } from './io.ts';
import { inspectSessions, type Inspected, type SessionOptions } from './sessions.ts';
import { harmless } from './terminal-text.ts';

interface Options extends SessionOptions {
  readonly explain?: string;
  readonly format: keyof typeof ANSWERS;
}

const ANSWERS = {
  text: valuesText,
  json: (inspected: readonly Inspected[]) => `${JSON.stringify(valuesJson(inspected), null, 2)}\n`,
} satisfies Record<string, (inspected: readonly Inspected[], io: Io) => string>;

export function register(program: Command, io: Io): void {
  program
    .command('derive')
    .description('print every value that follows from sessions, with its standard uncertainty')
    .argument('<paths...>', 'session files, folders, or - for standard input')
    .option('--explain <id>', 'the whole story of one value, for example setup/BASE/height/arp')
    .addOption(new Option('--format <format>', 'how to answer').choices(Object.keys(ANSWERS)).default('text'))
    .option('--root <folder>', 'files that a session names are read below this folder only')
    .action((paths: string[], options: Options) => run(paths, options, io));
}

async function run(paths: readonly string[], options: Options, io: Io): Promise<void> {
  const inspected = await inspectSessions(paths, options, io);
  io.print(
    options.explain === undefined
      ? ANSWERS[options.format](inspected, io)
      : story(options.explain, inspected),
  );
}

function story(id: string, inspected: readonly Inspected[]): string {
  const stories = inspected.flatMap(({ session, derivation }) =>
    listValues(derivation)
      .filter((listed) => listed.id === id)
      .map(({ value }) =>
        isHole(value) ? [`not known: ${value.hole}`] : explainAll(value, tellPlace(session)),
      ),
  );
  if (stories.length === 0) throw new CannotRun([`no value is called ${id}; tribrach derive lists them all`]);
  return stories.map((lines) => `${lines.map(harmless).join('\n')}\n`).join('\n');
}
