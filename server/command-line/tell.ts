/** `tribrach tell`: the key card of each setup, what to key in large plain order. */
import type { Command } from 'commander';
import picocolors from 'picocolors';
import { PROGRAM_FAULT } from '../findings/program/fault.ts';
import { CAUTIONS, keyCard, type KeyCard, type KeyLine } from '../record/card/key-card.ts';
import { CannotRun, type Io } from './io.ts';
import {
  inspectSessions,
  partOf,
  shownPath,
  tellFaults,
  type Inspected,
  type SessionOptions,
} from './sessions.ts';
import { counted, harmless, wrapped } from './terminal-text.ts';

export function register(program: Command, io: Io): void {
  program
    .command('tell')
    .description('print what the receiver should be told, setup by setup; exit 1 when that cannot be said')
    .argument('<paths...>', 'session files, folders, or - for standard input')
    .option('--root <folder>', 'files that a session names are read below this folder only')
    .action((paths: string[], options: SessionOptions) => run(paths, options, io));
}

async function run(paths: readonly string[], options: SessionOptions, io: Io): Promise<void> {
  const sessions = await inspectSessions(paths, options, io);
  const texts = sessions.flatMap((inspected) =>
    [...inspected.session.setups.keys()].map((name) =>
      partOf(inspected.path, io, () => setupText(name, inspected, io)),
    ),
  );
  if (texts.length === 0) throw new CannotRun(['there is no setup to tell a receiver about']);
  io.print(`${[...texts, wrapped(CAUTIONS, io.width)].join('\n')}\n`);
  tellFaults(sessions, io);
  if (sessions.some(({ findings }) => findings.some(({ code }) => code === PROGRAM_FAULT))) io.exitWith(1);
}

/** What is to be keyed at a setup, or that this cannot be said. */
function setupText(name: string, inspected: Inspected, io: Io): string {
  const setup = inspected.derivation.setups.get(name);
  if (!setup) throw new Error(`the setup ${name} was left out`);
  const card = keyCard(setup, inspected);
  if (card.lines.some(({ value }) => value === null)) io.exitWith(1);
  return cardText(card, inspected, io);
}

function cardText(card: KeyCard, { path, findings }: Inspected, io: Io): string {
  const { bold, dim, yellow } = picocolors.createColors(io.colours);
  const row = ({ label, value, note }: KeyLine) => {
    const shown = value === null ? yellow('?'.padStart(VALUE)) : bold(harmless(value).padStart(VALUE));
    return `  ${label.padEnd(LABEL)} ${shown}  ${value === null ? '' : dim(note)}`.trimEnd();
  };
  const errors = findings.filter(({ severity }) => severity === 'error').length;
  const warnings = [
    ...card.warnings,
    ...(errors > 0
      ? [`The session has ${counted(errors, 'error')}; see tribrach check ${shownPath(path)} first.`]
      : []),
  ];
  return [
    bold(`${harmless(card.setup)} on ${harmless(card.mark)}`) + dim(`  ${harmless(shownPath(path))}`),
    '',
    ...card.lines.map(row),
    ...(card.broadcast.every(({ value }) => value === null)
      ? []
      : ['', '  Antenna position in messages 1005 and 1006', ...card.broadcast.map(row)]),
    ...warnings.map((warning) => `\n${yellow(wrapped(warning, io.width, '  '))}`),
    '',
  ].join('\n');
}

const LABEL = 20;
const VALUE = 20;
