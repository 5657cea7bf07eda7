/** `tribrach derive`: every value that follows from sessions, with its uncertainty, or the whole story of one. */
import { type Command, Option } from 'commander';
import { isBelow, listValues } from '../derive/listing.ts';
import { explainAll } from '../quantities/explain.ts';
import { isHole } from '../quantities/value.ts';
import { tellPlace } from '../session/where.ts';
import { valuesJson } from '../record/machine/values-json.ts';
import { valuesText } from './derive-text.ts';
import { CannotRun, type Io } from './io.ts';
import { inspectSessions, tellFaults, type Inspected, type SessionOptions } from './sessions.ts';
import { harmless } from './terminal-text.ts';

interface Options extends SessionOptions {
  readonly explain?: string;
  readonly only?: string;
  readonly format: keyof typeof ANSWERS;
}

const ANSWERS = {
  text: valuesText,
  json: (inspected: readonly Inspected[], _io: Io, only: string) =>
    `${JSON.stringify(valuesJson(inspected, only), null, 2)}\n`,
} satisfies Record<string, (inspected: readonly Inspected[], io: Io, only: string) => string>;

export function register(program: Command, io: Io): void {
  program
    .command('derive')
    .description('print every value that follows from sessions, with its standard uncertainty')
    .argument('<paths...>', 'session files, folders, or - for standard input')
    .option('--only <id>', 'one value, or those below it, for example setup/BASE')
    .option('--explain <id>', 'the whole story of one value, for example setup/BASE/height/arp')
    .addOption(new Option('--format <format>', 'how to answer').choices(Object.keys(ANSWERS)).default('text'))
    .option('--root <folder>', 'files that a session names are read below this folder only')
    .action((paths: string[], options: Options) => run(paths, options, io));
}

async function run(paths: readonly string[], options: Options, io: Io): Promise<void> {
  const { explain, only = '', format } = options;
  const inspected = await inspectSessions(paths, options, io);
  const wanted = (id: string) => (explain === undefined ? isBelow(id, only) : id === explain);
  const found = inspected.some(({ derivation }) => listValues(derivation).some(({ id }) => wanted(id)));
  const asked = explain ?? only;
  if (!found && asked !== '')
    throw new CannotRun([`no value is called ${asked}; tribrach derive lists them all`]);
  tellFaults(inspected, io);
  if (explain === undefined) io.print(ANSWERS[format](inspected, io, only), format);
  else io.print(story(explain, inspected));
}

/** The story of a value in each session that has it. */
function story(id: string, inspected: readonly Inspected[]): string {
  const stories = inspected.flatMap(({ session, derivation }) =>
    listValues(derivation)
      .filter((listed) => listed.id === id)
      .map(({ value }) =>
        isHole(value) ? [`not known: ${value.hole}`] : explainAll(value, tellPlace(session)),
      ),
  );
  return stories.map((lines) => `${lines.map(harmless).join('\n')}\n`).join('\n');
}
