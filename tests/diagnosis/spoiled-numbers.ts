/** The numbers of a session's text, each with its kind, and every single way to spoil one: as hands, tapes and forms do. */
import type { Document } from '../../grammar/document.ts';
import type { Line, Measure, Time, IsoDate } from '../../grammar/tree.ts';
import { swappedDigits } from '../../server/slips/digits.ts';

/** A text with one number in it that is not what it was. */
export interface Spoiled {
  /** What the number is: `mark height`, `keyed position`, `check time`. */
  readonly kind: string;
  readonly how: Harm;
  /** From 1. */
  readonly line: number;
  readonly before: string;
  readonly after: string;
  readonly text: string;
}

export type Harm =
  'digits swapped' | 'digit dropped' | 'digit doubled' | 'sign' | 'unit' | 'column' | 'thousandfold';

/** A stretch of the text, counted from its start. */
interface Stretch {
  readonly start: number;
  readonly end: number;
}
interface Written extends Stretch {
  readonly kind: string;
  /** What is exchanged with another of its line: the number with its unit. */
  readonly whole: Stretch;
  /** What may stand for what: numbers of one line and one unit. */
  readonly unit: string | null;
  readonly unitAt: Stretch | null;
  readonly signed: '+' | '-' | null;
  readonly isMeasure: boolean;
}

/** Every way to spoil every number, in the order of the text. */
export function spoiledTexts(document: Document): Spoiled[] {
  const { text } = document;
  return linesOf(document).flatMap(({ entry, line, offset }) => {
    const numbers = numbersOf(line, entry, offset);
    const number = text.slice(0, offset + line.start).split('\n').length;
    const made = [
      ...numbers.flatMap((one) => [...digitHarm(one, text), ...otherHarm(one, text)]),
      ...lettersTurned(line, entry, offset, text),
      ...columnsExchanged(numbers, text),
    ];
    return made.map(({ kind, how, edits }) => {
      const after = edited(text, edits);
      const [first, last] = [edits[0], edits.at(-1)];
      const from = first?.start ?? 0;
      const to = last?.end ?? 0;
      return {
        kind,
        how,
        line: number,
        before: text.slice(from, to),
        after: after.slice(from, after.length - (text.length - to)),
        text: after,
      };
    });
  });
}

interface Edit extends Stretch {
  readonly put: string;
}
interface Made {
  readonly kind: string;
  readonly how: Harm;
  /** In the order of the text. */
  readonly edits: readonly Edit[];
}

const edited = (text: string, edits: readonly Edit[]) =>
  edits.reduceRight((whole, { start, end, put }) => whole.slice(0, start) + put + whole.slice(end), text);

function linesOf({ entries, starts }: Document) {
  return entries.flatMap((entry, index) =>
    [entry.header, ...entry.details].map((line) => ({
      entry: entry.header.word?.word ?? '',
      line,
      offset: starts[index] ?? 0,
    })),
  );
}

/** The words before a number say what it is; `keyed position 41°…, height 61 m` has two kinds on one line. */
const SAYS = new Set(['position', 'height', 'antenna-height', 'separation', 'every', 'radius', 'off']);

function numbersOf(line: Line, entry: string, offset: number): Written[] {
  const own = line.word?.word ?? '';
  let says = '';
  return line.items.flatMap((item): Written[] => {
    if (item.kind === 'word' && SAYS.has(item.word)) says = item.word;
    const kind = kindOf(entry, own, says);
    if (item.kind === 'time')
      return [typedWhole(item, entry === own ? `${own} time` : `${own} time`, offset)];
    if (item.kind === 'date') return [typedWhole(item, `${entry} date`, offset)];
    if (item.kind !== 'sum') return [];
    return item.terms.flatMap(({ measure, uncertainty }) => [
      ...(measure ? measured(measure, kind, offset) : []),
      ...(uncertainty ? measured(uncertainty, kind, offset) : []),
    ]);
  });
}

function kindOf(entry: string, own: string, says: string): string {
  if (own === 'keyed' || own === 'observed') return `${own} ${says === '' ? 'position' : says}`;
  if (own === entry) return entry;
  return `${entry} ${own}`;
}

function typedWhole({ start, end }: Time | IsoDate, kind: string, offset: number): Written {
  const whole = { start: start + offset, end: end + offset };
  return { ...whole, kind, whole, unit: kind, unitAt: null, signed: null, isMeasure: false };
}

function measured(measure: Measure, kind: string, offset: number): Written[] {
  const at = ({ start, end }: Stretch): Stretch => ({ start: start + offset, end: end + offset });
  return measure.parts.map(({ numeral, unit }) => ({
    ...at(numeral),
    kind,
    whole: at(measure),
    unit: measure.parts.map((part) => part.unit?.unit ?? '').join(),
    unitAt: unit ? at(unit) : null,
    signed: measure.sign,
    isMeasure: true,
  }));
}

function digitHarm(one: Written, text: string): Made[] {
  const typed = text.slice(one.start, one.end);
  const digits = [...typed].flatMap((character, index) => (/\d/.test(character) ? [index] : []));
  const dropped = digits.map((at) => typed.slice(0, at) + typed.slice(at + 1));
  const doubled = digits.map((at) => typed.slice(0, at + 1) + typed.slice(at));
  const made = (how: Harm, texts: readonly string[]) =>
    [...new Set(texts)].map((put) => ({
      kind: one.kind,
      how,
      edits: [{ start: one.start, end: one.end, put }],
    }));
  return [
    ...made('digits swapped', swappedDigits(typed)),
    ...made('digit dropped', dropped),
    ...made('digit doubled', doubled),
  ];
}

/** What is typed or ticked instead of a unit. */
const INSTEAD: Readonly<Record<string, readonly string[]>> = {
  m: ['mm', 'cm', 'ft'],
  mm: ['m', 'cm', 'in'],
  cm: ['m', 'mm'],
  ft: ['m', 'in', 'usft'],
  usft: ['m', 'ft'],
  in: ['mm', 'ft'],
  s: ['min'],
  kHz: ['MHz'],
  MHz: ['kHz'],
  kbps: ['bps'],
  ppm: ['ppb'],
};

function otherHarm({ kind, whole, unitAt, signed, isMeasure, ...at }: Written, text: string): Made[] {
  if (!isMeasure) return [];
  const made: Made[] = [];
  const typed = text.slice(at.start, at.end);
  const unit = unitAt ? text.slice(unitAt.start, unitAt.end) : '';
  // An angle of three parts has one sign and no other unit.
  if (at.start === whole.start || (signed !== null && text.slice(whole.start + 1, at.start).trim() === ''))
    made.push({
      kind,
      how: 'sign',
      edits: [
        signed === '-'
          ? { start: whole.start, end: whole.start + 1, put: '' }
          : { start: whole.start, end: whole.start, put: '-' },
      ],
    });
  if (unitAt)
    for (const put of INSTEAD[unit] ?? []) made.push({ kind, how: 'unit', edits: [{ ...unitAt, put }] });
  if (INSTEAD[unit] || unit === '')
    for (const by of [3, -3])
      made.push({
        kind,
        how: 'thousandfold',
        edits: [{ start: at.start, end: at.end, put: pointMoved(typed, by) }],
      });
  return made;
}

/** Without rounding: `1.284` by three is `1284`, back it is `0.001284`. */
function pointMoved(typed: string, by: number): string {
  const [whole = '', part = ''] = typed.split('.');
  const digits = `000${whole}${part}000`;
  const at = 3 + whole.length + by;
  const front = digits.slice(0, at).replace(/^0+(?=\d)/, '') || '0';
  const back = digits.slice(at).replace(/0+$/, '');
  return back === '' ? front : `${front}.${back}`;
}

/** East for west, north for south: the sign that a letter has. */
function lettersTurned(line: Line, entry: string, offset: number, text: string): Made[] {
  const other: Readonly<Record<string, string>> = { N: 'S', S: 'N', E: 'W', W: 'E' };
  return line.items.flatMap((item): Made[] => {
    const put = item.kind === 'word' ? other[item.word] : undefined;
    if (put === undefined || line.word === null) return [];
    const at = { start: item.start + offset, end: item.end + offset };
    if (text.slice(at.start, at.end).length !== 1) return [];
    return [{ kind: kindOf(entry, line.word.word, ''), how: 'sign', edits: [{ ...at, put }] }];
  });
}

/** Two numbers of one line that could stand for each other, each where the other was. */
function columnsExchanged(numbers: readonly Written[], text: string): Made[] {
  const wholes = numbers.filter(
    ({ whole }, index) => numbers.findIndex((other) => other.whole.start === whole.start) === index,
  );
  return wholes.flatMap((first, index) =>
    wholes.slice(index + 1).flatMap((second): Made[] => {
      if (first.unit !== second.unit || first.isMeasure !== second.isMeasure) return [];
      const [one, other] = [first, second].map(({ whole }) => text.slice(whole.start, whole.end));
      if (one === undefined || other === undefined || one === other) return [];
      return [
        {
          kind: first.kind === second.kind ? first.kind : `${first.kind} with ${second.kind}`,
          how: 'column',
          edits: [
            { ...first.whole, put: other },
            { ...second.whole, put: one },
          ],
        },
      ];
    }),
  );
}
