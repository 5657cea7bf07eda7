/**
 * A digest of what a session means and of every file it draws on, for a reviewer to write beside their name.
 *
 * A seal shows that something was changed since; it proves nobody's identity. Documents are signed with git for that.
 */
import { sha256 } from '@noble/hashes/sha2.js';
import { bytesToHex, utf8ToBytes } from '@noble/hashes/utils.js';
import { isRefusal } from '../quantities/refusal.ts';
import { canonicalEntry } from './canonical.ts';
import type { Bound } from './entries.ts';
import { resolvePath, type Files } from './files.ts';
import type { Session } from './session.ts';

/** The parts that a seal tells apart, so that a stale one says what has changed, and in which order it holds them. */
export const SEALED_PARTS = [
  'job',
  'marks',
  'gear',
  'setups',
  'link',
  'checks',
  'events',
  'points',
  'notes',
  'files',
] as const;
export type SealedPart = (typeof SEALED_PARTS)[number];

export interface Seal {
  /** SHA-256 of everything, 64 hexadecimal digits. */
  readonly whole: string;
  /** The first 16 bits of each part's own digest. */
  readonly parts: Readonly<Record<SealedPart, string>>;
}

/** The seal of a session as it stands, or the reasons why it cannot be sealed. */
export function sealOf(session: Session, files: Files): Seal | { readonly unsealed: readonly string[] } {
  const reasons = openValues(session);
  const drawn = drawnOn(session, files, reasons);
  if (reasons.length > 0) return { unsealed: reasons };
  const byPart = new Map<SealedPart, string[]>(SEALED_PARTS.map((part) => [part, []]));
  for (const bound of session.entries) {
    const part = partOf(bound);
    if (part) byPart.get(part)?.push(canonicalEntry(bound.entry));
  }
  for (const file of drawn) byPart.get('files')?.push(file);
  const digests = SEALED_PARTS.map((part) => digest(JSON.stringify([part, byPart.get(part)])));
  // The order of entries of different parts is part of the meaning, too: it settles which of two equal times came first.
  const order = session.entries.map((bound) => partOf(bound)).filter((part) => part !== null);
  const parts = Object.fromEntries(
    SEALED_PARTS.map((part, index) => [part, digests[index]?.slice(0, 4) ?? '']),
  );
  return { whole: digest(JSON.stringify([digests, order])), parts: parts as Record<SealedPart, string> };
}

/** As it stands in a `review` line: the whole, a point, and the parts in their order. */
export const writtenSeal = ({ whole, parts }: Seal) =>
  `${whole}.${SEALED_PARTS.map((part) => parts[part]).join('')}`;

/** The seal that a review line holds, or null where it is none. */
export function readSeal(written: string): Seal | null {
  const match = /^([0-9a-f]{64})\.([0-9a-f]{40})$/.exec(written);
  if (!match) return null;
  const parts = Object.fromEntries(
    SEALED_PARTS.map((part, index) => [part, match[2]?.slice(4 * index, 4 * index + 4) ?? '']),
  );
  return { whole: match[1] ?? '', parts: parts as Record<SealedPart, string> };
}

function partOf(bound: Bound): SealedPart | null {
  switch (bound.kind) {
    case 'review':
      return null;
    case 'job':
    case 'use':
    case 'ground':
      return 'job';
    case 'mark':
      return 'marks';
    case 'antenna':
    case 'rover':
    case 'surface':
      return 'gear';
    case 'setup':
      return 'setups';
    case 'radio':
    case 'stream':
      return 'link';
    case 'check':
      return 'checks';
    case 'event':
      return 'events';
    case 'points':
    case 'point':
      return 'points';
    default:
      return isEmpty(bound) ? null : 'notes';
  }
}

/** What stands before a file's first entry is most often nothing but comments. */
const isEmpty = ({ entry }: Bound) =>
  entry.header.word === null && entry.details.length === 0 && entry.header.items.length === 0;

function openValues(session: Session): string[] {
  const open = session.remarks.filter((remark) => remark.about === 'open-value');
  return open.length === 0
    ? []
    : [`${open.length === 1 ? 'a value is' : `${open.length} values are`} still open (?)`];
}

/** Each file that values come from, by path and digest; other session files by their meaning. */
function drawnOn(session: Session, files: Files, reasons: string[]): string[] {
  const drawn: string[] = [];
  for (const [path, document] of session.documents) {
    if (path === session.document.path) continue;
    drawn.push(
      JSON.stringify([
        relativeTo(session, path),
        digest(JSON.stringify(document.entries.map(canonicalEntry))),
      ]),
    );
  }
  for (const path of filesNamed(session)) {
    const bytes = files.bytes(path.resolved);
    if (isRefusal(bytes)) {
      if (path.needed) reasons.push(`${path.typed} cannot be read: ${bytes.refused}`);
      else drawn.push(JSON.stringify([path.typed, 'absent']));
    } else drawn.push(JSON.stringify([path.typed, digestOf(bytes)]));
  }
  return drawn.sort();
}

/** The path of another session file as seen from this one, so that a seal does not depend on where a folder lies. */
function relativeTo(session: Session, path: string): string {
  const own = session.document.path.split('/').slice(0, -1);
  const other = path.split('/');
  let shared = 0;
  while (shared < own.length && own[shared] === other[shared]) shared++;
  return [...own.slice(shared).map(() => '..'), ...other.slice(shared)].join('/');
}

interface NamedFile {
  readonly typed: string;
  readonly resolved: string;
  /** Values rest on it; photographs and raw data are kept beside the record and may lie elsewhere. */
  readonly needed: boolean;
}

/** Files that the entries name, each once. */
export function filesNamed(session: Session): NamedFile[] {
  const found = new Map<string, NamedFile>();
  const add = (typed: string | null | undefined, needed: boolean, from = session.document.path) => {
    if (!typed) return;
    // Files in two folders may be called the same by the session and by a file that it uses.
    const resolved = resolvePath(from, typed);
    const key = JSON.stringify([typed, resolved]);
    found.set(key, { typed, resolved, needed: needed || (found.get(key)?.needed ?? false) });
  };
  if (session.job?.geoid?.file) add(session.job.geoid.name, true);
  for (const rover of session.rovers.values())
    if (rover.geoid?.file) add(rover.geoid.name, false, rover.place.path);
  for (const antenna of session.antennas.values())
    add(antenna.calibration?.file.text, true, antenna.place.path);
  for (const setup of session.setups.values()) {
    add(setup.captured?.text, true);
    add(setup.rawLog?.text, false);
    add(setup.ephemerides?.text, false);
  }
  for (const occupied of [...session.checks, ...session.singlePoints])
    add(occupied.observed?.recording?.file.text, true);
  for (const points of session.points) add(points.file?.text, true);
  return [...found.values()];
}

/** Text with LF line ends, whatever ends its lines; anything with a NUL byte as it is. */
function digestOf(bytes: Uint8Array): string {
  const before = known.get(bytes);
  if (before) return before;
  const made = bytesToHex(sha256(bytes.includes(0) ? bytes : withLineFeeds(bytes)));
  known.set(bytes, made);
  return made;
}
const known = new WeakMap<Uint8Array, string>();

function withLineFeeds(bytes: Uint8Array): Uint8Array {
  if (!bytes.includes(13)) return bytes;
  const kept = new Uint8Array(bytes.length);
  let length = 0;
  bytes.forEach((byte, index) => {
    if (byte !== 13) kept[length++] = byte;
    else if (bytes[index + 1] !== 10) kept[length++] = 10;
  });
  return kept.subarray(0, length);
}

const digest = (text: string) => bytesToHex(sha256(utf8ToBytes(text)));
