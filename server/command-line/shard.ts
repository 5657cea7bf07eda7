/** A share of the sessions of `check`, and the part that it prints of them, from which `join` makes the answer of one run. */
import { InvalidArgumentError } from 'commander';
import manifest from '../../package.json' with { type: 'json' };
import { PROOF_CLASSES } from '../derive/trust/trust.ts';
import { SEVERITIES } from '../findings/finding.ts';
import { refuse, type Refusal } from '../quantities/refusal.ts';
import type { Demands } from './check-answer.ts';
import type { Examined } from './examine.ts';
import { digestOf, isExamined } from './kept-answers.ts';

export interface Shard {
  /** From 1. */
  readonly number: number;
  readonly of: number;
}

const MOST_SHARDS = 10_000;

/** `3/16`, as on a command line. */
export function shardIn(text: string): Shard {
  const [, number = 0, of = 0] = (/^(\d{1,5})\/(\d{1,5})$/.exec(text) ?? []).map(Number);
  if (number < 1 || number > of || of > MOST_SHARDS)
    throw new InvalidArgumentError(`Write the share and how many there are, for example 3/16.`);
  return { number, of };
}

/** Every so-manieth session, so that a folder of long days is shared by all. */
export const shareOf = (paths: readonly string[], { number, of }: Shard) =>
  paths.filter((_, index) => index % of === number - 1);

/** What all parts of one run have in common. */
interface Run extends Demands {
  readonly version: string;
  readonly hints: boolean;
  /** Of all the sessions that the shards share, whose names and order are told apart by the digest. */
  readonly sessions: number;
  readonly list: string;
}

export interface Part {
  readonly shard: Shard;
  readonly run: Run;
  readonly examined: readonly Examined[];
}

export function partText(
  shard: Shard,
  paths: readonly string[],
  demands: Demands & { readonly hints: boolean },
  examined: readonly Examined[],
): string {
  const { severity, require, hints } = demands;
  const list = digestOf(JSON.stringify(paths));
  const run: Run = { version: manifest.version, severity, require, hints, sessions: paths.length, list };
  return [{ part: KIND, shard, run }, ...examined].map((line) => `${JSON.stringify(line)}\n`).join('');
}
const KIND = 'tribrach check';

/** A part as it was printed; what was cut off, or is something else, is refused. */
export function partIn(text: string): Part | Refusal {
  const lines = text.split('\n');
  const [head, ...rest] = lines.slice(0, -1).map(parsed);
  if (!isHead(head)) return refuse('it is no part that tribrach check --shard printed');
  if (head.run.version !== manifest.version)
    return refuse(`tribrach ${head.run.version} printed it, and this is ${manifest.version}`);
  const examined = rest.filter(isExamined);
  const wanted = sharedCount(head.run.sessions, head.shard);
  if (lines.at(-1) !== '' || examined.length !== rest.length || examined.length !== wanted)
    return refuse(`it is not whole: it should hold ${wanted} sessions`);
  return { shard: head.shard, run: head.run, examined };
}

const sharedCount = (sessions: number, { number, of }: Shard) =>
  Math.max(0, Math.ceil((sessions - (number - 1)) / of));

/** All sessions in the order of one run, or why the parts are not those of one. */
export function joined(parts: readonly (Part & { readonly path: string })[]): Part | Refusal {
  const [first] = parts;
  if (!first) return refuse('there is no part to join');
  const other = parts.find(
    ({ run, shard }) => JSON.stringify([run, shard.of]) !== JSON.stringify([first.run, first.shard.of]),
  );
  if (other)
    return refuse(
      `${first.path} and ${other.path} are of different runs: give each share the same files and options`,
    );
  const byNumber = new Map(parts.map((part) => [part.shard.number, part]));
  const { of } = first.shard;
  const missing = Array.from({ length: of }, (_, index) => index + 1).filter(
    (number) => !byNumber.has(number),
  );
  if (missing.length > 0)
    return refuse(
      `not all parts are there: ${missing
        .slice(0, 20)
        .map((number) => `${number}/${of}`)
        .join(', ')}${missing.length > 20 ? ' …' : ''} missing`,
    );
  if (parts.length > of) return refuse('a part is given twice');
  const examined = Array.from(
    { length: first.run.sessions },
    (_, index) => byNumber.get((index % of) + 1)?.examined[Math.floor(index / of)],
  );
  return { ...first, examined: examined.flatMap((session) => session ?? []) };
}

function isHead(
  value: unknown,
): value is { readonly part: string; readonly shard: Shard; readonly run: Run } {
  const { part, shard, run } = recordIn(value);
  const { number, of } = recordIn(shard);
  const { version, severity, require, sessions, list } = recordIn(run);
  return (
    part === KIND &&
    [number, of, sessions].every((count) => Number.isSafeInteger(count)) &&
    [version, list].every((text) => typeof text === 'string') &&
    Number(number) >= 1 &&
    Number(number) <= Number(of) &&
    Number(of) <= MOST_SHARDS &&
    SEVERITIES.some((one) => one === severity) &&
    (require === null || Object.keys(PROOF_CLASSES).some((one) => one === require))
  );
}

function parsed(line: string): unknown {
  try {
    return JSON.parse(line);
  } catch {
    return null;
  }
}

const recordIn = (value: unknown): Readonly<Record<string, unknown>> =>
  typeof value === 'object' && value !== null ? (value as Readonly<Record<string, unknown>>) : {};
