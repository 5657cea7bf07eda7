/** `tribrach points`: the points of a session judged and repaired, written to a folder with an account of it. */
import { createHash } from 'node:crypto';
import { statSync } from 'node:fs';
import { basename, dirname } from 'node:path';
import type { Command } from 'commander';
import { openDocument } from '../../grammar/document.ts';
import type { PointSet } from '../derive/points.ts';
import type { RepairedPoint } from '../derive/repair-row.ts';
import { inspect, type Inspection } from '../inspect.ts';
import { isRefusal, type Refusal } from '../quantities/refusal.ts';
import { isHole } from '../quantities/value.ts';
import { pointsAccount } from '../record/points-account.ts';
import { geojsonWriter } from '../record/points-geojson.ts';
import { landxmlWriter } from '../record/points-landxml.ts';
import { sessionRepair } from '../record/points-repair.ts';
import {
  isTableColumn,
  TABLE_COLUMNS,
  tableWriter,
  usualColumns,
  type PointsWriter,
  type TableColumn,
} from '../record/points-table.ts';
import { tallied, type Tally } from '../record/points-tally.ts';
import { diskChunks, diskFiles, rootOf } from './disk-files.ts';
import { CannotRun, type Io } from './io.ts';
import { newFolder, type NewFile, type NewFolder } from './new-folder.ts';
import { progressOf } from './progress.ts';
import { STANDARD_INPUT } from './session-paths.ts';
import { readTexts, requireFolder } from './sessions.ts';

interface Options {
  readonly out?: string;
  readonly format: string;
  readonly columns?: string;
  readonly force?: boolean;
  readonly root?: string;
}

const ENDINGS = { csv: 'csv', geojson: 'geojson', landxml: 'xml' } as const;
type Format = keyof typeof ENDINGS;

export function register(program: Command, io: Io): void {
  program
    .command('points')
    .description('judge and repair the points of a session; what was read is never touched')
    .argument('<session>', 'the session file that names the points')
    .option(
      '--out <folder>',
      'write the points and an account there, whole or not at all; without it the account is printed',
    )
    .option('--format <formats>', `any of ${Object.keys(ENDINGS).join(', ')}, parted by commas`, 'csv')
    .option('--columns <columns>', `of the table, in this order: ${TABLE_COLUMNS.join(', ')}`)
    .option('--force', 'replace files that are there already; never what was read')
    .option('--root <folder>', 'files that the session names are read below this folder only')
    .action((path: string, options: Options) => run(path, options, io));
}

async function run(path: string, options: Options, io: Io): Promise<void> {
  const formats = formatsOf(options.format);
  const columns = options.columns === undefined ? null : columnsOf(options.columns);
  if (options.root !== undefined) requireFolder(options.root);
  const [read] = await readTexts([path], io);
  if (!read) throw new CannotRun([`cannot read ${path}`]);
  const root = options.root ?? rootOf(path === STANDARD_INPUT ? '.' : dirname(path));
  const reading: Reading = {
    digests: new Map([[read.path, createHash('sha256').update(read.text).digest('hex')]]),
    bytes: new Map(),
  };
  const chunks = diskChunks(root, '.');
  const inspection = inspect(openDocument(read.path, read.text), {
    ...diskFiles(root, '.'),
    chunks: (file) => watched(chunks(file), file, reading),
  });
  const { points } = inspection.derivation;
  if (points.length === 0) throw new CannotRun([`${path} names no points`]);
  const inputs = [read.path, ...points.flatMap((set) => (set.path === null ? [] : [set.path]))];
  const folder = options.out === undefined ? null : newFolder(options.out, inputs, options.force ?? false);
  try {
    const written = writeAll(inspection, folder, formats, columns, reading, io);
    const account = accountOf(inspection, written, reading.digests);
    if (!folder) return io.print(account);
    folder.file('account.md').text.text(account);
    folder.keep();
    io.print(closing(written, options.out ?? ''));
  } finally {
    folder?.discard();
  }
}

function formatsOf(typed: string): Format[] {
  const words = typed.split(',').map((word) => word.trim());
  const odd = words.find((word) => !Object.hasOwn(ENDINGS, word));
  if (odd !== undefined)
    throw new CannotRun([`the format ${odd} is not known; there are ${Object.keys(ENDINGS).join(', ')}`]);
  return [...new Set(words as Format[])];
}

function columnsOf(typed: string): TableColumn[] {
  const words = typed.split(',').map((word) => word.trim());
  const odd = words.find((word) => !isTableColumn(word));
  if (odd !== undefined)
    throw new CannotRun([`the column ${odd} is not known; there are ${TABLE_COLUMNS.join(', ')}`]);
  const twice = words.find((word, index) => words.indexOf(word) !== index);
  if (twice !== undefined) throw new CannotRun([`the column ${twice} is asked for twice`]);
  return words.filter(isTableColumn);
}

interface Written {
  readonly repair: ReturnType<typeof sessionRepair>;
  readonly tallies: readonly Tally[];
  readonly files: readonly { readonly name: string; readonly from: string }[];
  readonly refusals: readonly string[];
}

/** One pass over the points of each set, however many formats are asked for. */
function writeAll(
  inspection: Inspection,
  folder: NewFolder | null,
  formats: readonly Format[],
  columns: readonly TableColumn[] | null,
  reading: Reading,
  io: Io,
): Written {
  const repair = sessionRepair(inspection.session, inspection.derivation);
  const files: { name: string; from: string }[] = [];
  const refusals: string[] = [];
  const names = new Map<string, number>();
  const tallies = groupsOf(inspection.derivation.points).flatMap((group) => {
    const [first] = group;
    if (!first) return [];
    const stem = unusedName(stemOf(first), names);
    const outputs = folder
      ? formats.flatMap((format) => {
          const writer = first.form ? writerFor(format, first, inspection, columns) : noPosition(first);
          if (isRefusal(writer)) refusals.push(`${format} of ${first.name}: ${writer.refused}`);
          if (isRefusal(writer)) return [];
          const file = folder.file(`${stem}.${ENDINGS[format]}`);
          files.push({ name: file.name, from: group.map(titleOf).join(', ') });
          return [{ writer, file }];
        })
      : [];
    outputs.forEach(({ writer, file }) => file.text.text(writer.head));
    const done = group.map((set) => {
      const progress = progressOf(set.name, shareRead(set, reading), io);
      const tally = tallied(set, repair.repairer(set), (point) => {
        writePoint(point, outputs);
        progress.step();
      });
      progress.finish();
      return tally;
    });
    outputs.forEach(({ writer, file }) => file.text.text(writer.tail));
    return done;
  });
  return { repair, tallies, files, refusals };
}

function writePoint(
  point: RepairedPoint,
  outputs: readonly { readonly writer: PointsWriter; readonly file: NewFile }[],
): void {
  for (const { writer, file } of outputs) {
    writer.row(point, file.text);
    file.spill();
  }
}

const noPosition = (set: PointSet): Refusal => ({ refused: `the columns of ${set.name} make no position` });

function writerFor(
  format: Format,
  set: PointSet,
  { derivation }: Inspection,
  columns: readonly TableColumn[] | null,
): PointsWriter | Refusal {
  const { frame, geoid } = derivation;
  const confidence = frame.confidence.value;
  if (format === 'csv') return tableWriter(set, columns ?? usualColumns(set), confidence);
  if (format === 'geojson') return geojsonWriter(set, isHole(geoid) ? null : geoid, confidence);
  return landxmlWriter(set, frame, new Date().toISOString());
}

/** Points that stand one by one in the notes go to one file for each form and surface. */
function groupsOf(sets: readonly PointSet[]): PointSet[][] {
  const groups: PointSet[][] = [];
  const single = new Map<string, PointSet[]>();
  for (const set of sets) {
    if (set.kind !== 'point') {
      groups.push([set]);
      continue;
    }
    const system = isHole(set.system) ? '' : (set.system.code ?? set.system.name);
    const surface = isHole(set.height) ? '' : `${set.height.surface} ${set.height.offset}`;
    const key = `${set.form ?? ''} ${system} ${surface}`;
    const group = single.get(key);
    if (group) group.push(set);
    else {
      const begun = [set];
      single.set(key, begun);
      groups.push(begun);
    }
  }
  return groups;
}

const titleOf = (set: PointSet) =>
  set.kind === 'file' ? set.name : set.kind === 'rows' ? 'the rows of the session' : `point ${set.name}`;

/** Two sets of one name, or names that some disk takes for the same, are told apart by a number. */
function unusedName(stem: string, names: Map<string, number>): string {
  const key = stem.toLowerCase();
  const count = (names.get(key) ?? 0) + 1;
  names.set(key, count);
  return count === 1 ? stem : unusedName(`${stem}-${count}`, names);
}

function stemOf(set: PointSet): string {
  if (set.kind !== 'file') return set.kind === 'rows' ? 'rows' : 'points';
  const plain = basename(set.name.replaceAll('\\', '/')).replace(/\.[^.]*$/, '');
  const safe = plain.replace(/[^\p{L}\p{N}._ -]/gu, '_').replace(/^\.+/, '');
  return safe === '' || safe.toLowerCase() === 'account' ? `${safe}points` : safe;
}

function accountOf(
  { session, derivation }: Inspection,
  { repair, tallies, files, refusals }: Written,
  digests: ReadonlyMap<string, string>,
): string {
  const unclear = repair.confirmed.unclear.map(
    ({ correction, because }) => `the correction "${correction.text}" repairs nothing: ${because}`,
  );
  return pointsAccount({
    session,
    derivation,
    trust: repair.trust,
    repair: repair.repair,
    tallies,
    files,
    refusals,
    unclear,
    digests,
  });
}

function closing({ tallies, files, refusals }: Written, out: string): string {
  const total = tallies.reduce((sum, tally) => sum + tally.total, 0);
  const repaired = tallies.reduce((sum, tally) => sum + tally.repaired, 0);
  const unread = tallies.flatMap(({ set, facts }) =>
    isRefusal(facts) ? [`${set.name} cannot be read: ${facts.refused}\n`] : [],
  );
  return [
    ...unread,
    ...refusals.map((refusal) => `not written: ${refusal}\n`),
    `${repaired} of ${total} points repaired; ${[...files.map(({ name }) => name), 'account.md'].join(', ')} written to ${out}\n`,
  ].join('');
}

/** What is known of the files while they are read: their digests, and how many bytes have been. */
interface Reading {
  readonly digests: Map<string, string>;
  readonly bytes: Map<string, number>;
}

/** A file that is read in part has no digest. */
function watched(
  chunks: Iterable<Uint8Array> | Refusal,
  name: string,
  { digests, bytes }: Reading,
): Iterable<Uint8Array> | Refusal {
  if (isRefusal(chunks)) return chunks;
  return (function* () {
    const hash = createHash('sha256');
    let done = 0;
    for (const chunk of chunks) {
      hash.update(chunk);
      done += chunk.length;
      bytes.set(name, done);
      yield chunk;
    }
    digests.set(name, hash.digest('hex'));
  })();
}

function shareRead({ path }: PointSet, { bytes }: Reading): () => number | null {
  const size = path === null ? 0 : (statSync(path, { throwIfNoEntry: false })?.size ?? 0);
  return () => (path === null || size === 0 ? null : (bytes.get(path) ?? 0) / size);
}
