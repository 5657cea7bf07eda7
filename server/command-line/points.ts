/** `tribrach points`: the points of a session judged and repaired, written to a folder with an account of it. */
import { createHash } from 'node:crypto';
import { statSync } from 'node:fs';
import { basename, dirname } from 'node:path';
import type { Command } from 'commander';
import { openDocument } from '../../grammar/document.ts';
import type { PointSet } from '../derive/points/points.ts';
import { FLAW_CLASSES, pointClassInWords } from '../derive/repair/flaws.ts';
import type { RepairedPoint } from '../derive/repair/row.ts';
import { PROGRAM_FAULT } from '../findings/program/fault.ts';
import { inspect, type Inspection } from '../inspect.ts';
import { isRefusal, type Refusal } from '../quantities/refusal.ts';
import { isHole } from '../quantities/value.ts';
import { pointsAccount } from '../record/points/account.ts';
import { geojsonWriter } from '../record/points/geojson.ts';
import { landxmlWriter } from '../record/points/landxml.ts';
import { sessionRepair } from '../record/points/repair.ts';
import {
  isTableColumn,
  pointsTable,
  TABLE_COLUMNS,
  usualColumns,
  type PointsTable,
  type TableColumn,
} from '../record/points/table.ts';
import { tallied, type Tally } from '../record/points/tally.ts';
import type { PointsWriter } from '../record/points/writer.ts';
import { diskChunks, diskFiles, rootOf } from './disk-files.ts';
import { CannotRun, type Io } from './io.ts';
import { newFolder, type NewFile, type NewFolder } from './new-folder.ts';
import { progressOf } from './progress.ts';
import { STANDARD_INPUT } from './session-paths.ts';
import { readTexts, requireFolder } from './sessions.ts';
import { evidenceOf } from './writing.ts';
import { tableWriter, type TableWriter } from './table-thread.ts';

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
  const { points, whole } = inspection.derivation;
  if (!whole)
    throw new CannotRun([`points are not judged while ${PROGRAM_FAULT} stands; see tribrach check ${path}`]);
  if (points.length === 0) throw new CannotRun([`${path} names no points`]);
  const inputs = [read.path, ...evidenceOf(inspection.session)];
  const folder = options.out === undefined ? null : newFolder(options.out, inputs, options.force ?? false);
  const tables = tableWriter(io.program);
  try {
    const written = await writeAll(inspection, folder, { formats, columns, tables }, reading, io);
    const account = accountOf(inspection, written, reading.digests);
    if (!folder) return io.print(account);
    folder.file('account.md').text.text(account);
    folder.keep();
    io.print(closing(written, options.out ?? ''));
  } finally {
    await tables.stop();
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

interface Wanted {
  readonly formats: readonly Format[];
  readonly columns: readonly TableColumn[] | null;
  readonly tables: TableWriter;
}

/** One pass over the points of each set, however many formats are asked for. */
async function writeAll(
  inspection: Inspection,
  folder: NewFolder | null,
  wanted: Wanted,
  reading: Reading,
  io: Io,
): Promise<Written> {
  const repair = sessionRepair(inspection.session, inspection.derivation);
  const files: { name: string; from: string }[] = [];
  const refusals: string[] = [];
  const names = new Map<string, number>();
  const tallies: Tally[] = [];
  for (const group of groupsOf(inspection.derivation.points)) {
    const [first] = group;
    if (!first) continue;
    const stem = unusedName(stemOf(first), names);
    const outputs: Output[] = [];
    for (const format of folder ? wanted.formats : []) {
      const output = first.form ? outputFor(format, first, inspection, wanted) : noPosition(first);
      if (isRefusal(output)) refusals.push(`${format} of ${first.name}: ${output.refused}`);
      else if (folder) {
        const file = folder.file(`${stem}.${ENDINGS[format]}`);
        files.push({ name: file.name, from: group.map(titleOf).join(', ') });
        outputs.push(output(file));
      }
    }
    for (const set of group) {
      const progress = progressOf(set.name, shareRead(set, reading), io);
      const work = tallied(set, repair.repairer(set), (point) => {
        for (const output of outputs) output.take(point);
        progress.step();
      });
      let step = work.next();
      for (; !step.done; step = work.next()) await wanted.tables.room();
      tallies.push(step.value);
      progress.finish();
    }
    for (const output of outputs) output.end();
    await wanted.tables.finish();
  }
  return { repair, tallies, files, refusals };
}

/** A file while points are written into it. */
interface Output {
  readonly take: (point: RepairedPoint) => void;
  readonly end: () => void;
}

function outputFor(
  format: Format,
  set: PointSet,
  { derivation }: Inspection,
  { columns, tables }: Wanted,
): ((file: NewFile) => Output) | Refusal {
  const { frame, geoid } = derivation;
  const confidence = frame.confidence.value;
  if (format === 'csv') {
    const table = pointsTable(set, columns ?? usualColumns(set), confidence);
    return isRefusal(table) ? table : (file) => tableOutput(table, file, tables);
  }
  const writer =
    format === 'geojson'
      ? geojsonWriter(set, isHole(geoid) ? null : geoid, confidence)
      : landxmlWriter(set, frame, new Date().toISOString());
  return isRefusal(writer) ? writer : (file) => plainOutput(writer, file);
}

function tableOutput({ head, form, add, rest }: PointsTable, file: NewFile, tables: TableWriter): Output {
  file.text.text(head);
  return {
    take(point) {
      const block = add(point);
      if (block) tables.write(block, form, file);
    },
    end: () => tables.write(rest(), form, file),
  };
}

function plainOutput({ head, row, tail }: PointsWriter, file: NewFile): Output {
  file.text.text(head);
  return {
    take(point) {
      row(point, file.text);
      file.spill();
    },
    end: () => file.text.text(tail),
  };
}

const noPosition = (set: PointSet): Refusal => ({ refused: `the columns of ${set.name} make no position` });

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
    `${repaired} of ${total} points repaired${notUsable(tallies)}; ${[...files.map(({ name }) => name), 'account.md'].join(', ')} written to ${out}\n`,
  ].join('');
}

/** `, 3 not usable (1 too weak, 2 unreadable)`. */
function notUsable(tallies: readonly Tally[]): string {
  const counts = FLAW_CLASSES.map((found) => ({
    found,
    count: tallies.reduce((sum, { flaws }) => sum + (flaws.get(found) ?? 0), 0),
  })).filter(({ count }) => count > 0);
  if (counts.length === 0) return '';
  const total = counts.reduce((sum, { count }) => sum + count, 0);
  return `, ${total} not usable (${counts.map(({ found, count }) => `${count} ${pointClassInWords(found)}`).join(', ')})`;
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
