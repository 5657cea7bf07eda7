/** The commands of `tribrach`, in the order in which help lists them, and what happens when one cannot run. */
import { Command, CommanderError } from 'commander';
import manifest from '../../package.json' with { type: 'json' };
import * as capture from './capture.ts';
import * as check from './check.ts';
import * as compare from './compare.ts';
import * as completion from './completion.ts';
import * as derive from './derive.ts';
import * as explain from './explain.ts';
import * as format from './format.ts';
import { CannotRun, type Io } from './io.ts';
import * as join from './join.ts';
import * as marks from './marks.ts';
import * as newSession from './new.ts';
import * as points from './points.ts';
import * as report from './report.ts';
import * as seal from './seal.ts';
import * as serve from './serve.ts';
import { reasonOf } from './read-file.ts';
import { steady } from './steady.ts';
import { harmless } from './terminal-text.ts';
import * as tell from './tell.ts';

/** Each adds itself to the program; a new command is a new file and a name here. */
const COMMANDS: readonly { readonly register: (program: Command, io: Io) => void }[] = [
  check,
  join,
  explain,
  derive,
  tell,
  report,
  format,
  points,
  capture,
  compare,
  seal,
  newSession,
  marks,
  serve,
  completion,
];

/** Runs one command; whatever goes wrong ends in a sentence on standard error and exit status 2. */
export async function runCommand(words: readonly string[], given: Io): Promise<void> {
  const io = steady(given);
  try {
    await program(io).parseAsync(gitWords(words), { from: 'user' });
  } catch (error) {
    if (error instanceof CommanderError) return io.exitWith(error.exitCode === 0 ? 0 : 2);
    const reasons = error instanceof CannotRun ? error.reasons : [fault(error)];
    io.complain(reasons.map((reason) => `tribrach: ${harmless(reason)}\n`).join(''));
    io.exitWith(2);
  }
}

/** What git calls a diff driver with are names and hashes, even where a file is called like an option. */
function gitWords(words: readonly string[]): readonly string[] {
  if (words[0] !== 'compare' || !words.includes('--git') || words.includes('--')) return words;
  const isHash = (back: number) => /^(?:[0-9a-f]{4,64}|\.)$/.test(words.at(-back) ?? '');
  const count = isHash(5) && isHash(2) ? 7 : isHash(7) && isHash(4) ? 9 : 0;
  return count === 0 ? words : [...words.slice(0, -count), '--', ...words.slice(-count)];
}

function program(io: Io): Command {
  const tribrach = new Command('tribrach')
    .description(
      'Checks survey session files: what to key into the GNSS base, what was keyed wrong, and whether the checks prove the day.',
    )
    .version(manifest.version)
    .exitOverride()
    .configureOutput({
      writeOut: io.print,
      writeErr: io.complain,
      outputError: (text, write) => write(text.replace(/^error:/, 'tribrach:')),
    });
  for (const { register } of COMMANDS) register(tribrach, io);
  for (const command of tribrach.commands) command.copyInheritedSettings(tribrach);
  return tribrach;
}

/** What the system refuses is no fault of anybody's here. */
const fault = (error: unknown) => (isOfSystem(error) ? refused(error) : faultOf(error));

const isOfSystem = (error: unknown): error is NodeJS.ErrnoException =>
  error instanceof Error && 'code' in error && 'syscall' in error;
const refused = (error: NodeJS.ErrnoException) =>
  `${error.path === undefined ? 'the system refuses: ' : `cannot use ${error.path}: `}${reasonOf(error)}`;
const faultOf = (error: unknown) =>
  `a fault in tribrach itself: ${error instanceof Error ? error.message : String(error)}`;
