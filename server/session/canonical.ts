/** A session's meaning as text: order and values, whatever the blanks, the comments, the quotes and the line ends. */
import { BLANKS } from '../../grammar/characters.ts';
import type { Item, Line, Measure, Entry } from '../../grammar/tree.ts';

/** Two entries mean the same just where their canonical forms are equal; digits count as typed. */
export function canonicalEntry(entry: Entry): string {
  return JSON.stringify([entry.header, ...entry.details].map(canonicalLine));
}

const canonicalLine = (line: Line) => [
  line.word?.word.toLowerCase() ?? null,
  ...line.items.map(canonicalItem),
];

function canonicalItem(item: Item): unknown {
  switch (item.kind) {
    case 'text':
      return ['text', item.text];
    case 'name':
      return ['name', item.name];
    case 'word':
      return ['word', item.word];
    case 'time':
    case 'date':
      return [item.kind, item.typed];
    case 'comma':
    case 'slash':
      return item.kind;
    case 'junk':
      return ['junk', item.text];
    case 'sum':
      return [
        'sum',
        ...item.terms.map(({ sign, measure, uncertainty, label }) => [
          sign,
          measure && canonicalMeasure(measure),
          uncertainty && canonicalMeasure(uncertainty),
          label?.text ?? null,
        ]),
      ];
  }
}

const canonicalMeasure = ({ sign, parts }: Measure) => [
  sign,
  ...parts.flatMap(({ numeral, unit }) => [numeral.typed.replace(BLANK_RUNS, ' '), unit?.unit ?? null]),
];
/** Digits may stand in groups, and how far apart those are says nothing. */
const BLANK_RUNS = new RegExp(`[${BLANKS}]+`, 'g');
