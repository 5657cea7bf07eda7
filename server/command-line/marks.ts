/** `tribrach marks`: a register extract as a marks file; what the extract does not say is asked for, never guessed. */
import { basename } from 'node:path';
import { type Command, Option } from 'commander';
import { extractColumns, extractGeojson, extractRows, type Extract } from '../evidence/register-extract.ts';
import { isRefusal } from '../quantities/refusal.ts';
import { marksFile, registerMark } from '../record/notes/marks-file.ts';
import { CannotRun, type Io } from './io.ts';
import { LARGEST_EVIDENCE, readWhole, sessionText } from './read-file.ts';
import { requireDay } from './sessions.ts';
import { writeNewFile } from './writing.ts';

interface Options {
  readonly out?: string;
  readonly columns?: string;
  readonly separator: keyof typeof SEPARATORS;
  readonly decimal: 'point' | 'comma';
  readonly skip: string;
  readonly grid?: string;
  readonly source?: string;
  readonly date?: string;
  readonly name: string;
}

const SEPARATORS = { comma: ',', semicolon: ';', tab: '\t' } as const;

export function register(program: Command, io: Io): void {
  program
    .command('marks')
    .description('turn a register extract (rows, or GeoJSON) into a marks file for sessions to use')
    .argument('<file>', 'rows with a declared order, or GeoJSON')
    .option(
      '--columns <columns>',
      'what the columns mean: "name, east m, north m, height m orthometric, description"',
    )
    .addOption(
      new Option('--separator <sign>', 'what parts the columns')
        .choices(Object.keys(SEPARATORS))
        .default('comma'),
    )
    .addOption(
      new Option('--decimal <sign>', 'the decimal sign').choices(['point', 'comma']).default('point'),
    )
    .option('--skip <rows>', 'rows before the first mark, such as a heading', '0')
    .option('--grid <code>', 'the grid of the coordinates, for example EPSG:3763')
    .option('--source <text>', 'the register that the extract is from')
    .option('--date <date>', 'when it was looked up, as YYYY-MM-DD')
    .option('--name <property>', 'the GeoJSON property that holds the name', 'name')
    .option(
      '--out <file>',
      'where to write the marks file (it must not be there yet); else to standard output',
    )
    .action((path: string, options: Options) => run(path, options, io));
}

function run(path: string, options: Options, io: Io): void {
  requireDay(options.date);
  const read = readWhole(path, LARGEST_EVIDENCE);
  if (isRefusal(read)) throw new CannotRun([`cannot read ${path}: ${read.refused}`]);
  const geojson = /\.(geo)?json$/i.test(path);
  const extract = geojson ? fromGeojson(read.bytes, path, options) : fromRows(read.bytes, options);
  if (extract.marks.length === 0)
    throw new CannotRun([`${path} holds no mark`, ...extract.problems.map(({ sentence }) => sentence)]);
  const text = marksFile(extract.marks.map(registerMark), {
    title: basename(path),
    grid: geojson ? 'EPSG:4326' : (options.grid ?? null),
    source: options.source ?? null,
    date: options.date ?? null,
  });
  for (const { sentence, line } of extract.problems)
    io.complain(`tribrach: ${path}${line === undefined ? '' : `:${line}`}: ${sentence}\n`);
  if (options.out === undefined) return io.print(text, 'file');
  writeNewFile(options.out, text);
  io.print(
    `${options.out} is written, with ${extract.marks.length} marks. See what it still asks for: tribrach check ${options.out}\n`,
  );
}

function fromRows(bytes: Uint8Array, { columns, separator, decimal, skip }: Options): Extract {
  if (columns === undefined)
    throw new CannotRun([
      'say what the columns mean: --columns "name, east m, north m, height m orthometric"',
    ]);
  const declared = extractColumns(columns);
  if (typeof declared === 'string') throw new CannotRun([`--columns: ${declared}`]);
  if (!/^\d{1,6}$/.test(skip)) throw new CannotRun([`--skip ${skip} is no number of rows`]);
  return extractRows(bytes, declared, SEPARATORS[separator], decimal === 'comma' ? ',' : '.', Number(skip));
}

function fromGeojson(bytes: Uint8Array, path: string, { name }: Options): Extract {
  const text = sessionText(bytes);
  if (isRefusal(text)) throw new CannotRun([`cannot read ${path}: ${text.refused}`]);
  const extract = extractGeojson(text, name);
  if (typeof extract === 'string') throw new CannotRun([`cannot read ${path}: ${extract}`]);
  return extract;
}
