/**
 * Reads well-known text (WKT 1 and WKT 2 alike) into a tree of words and values, knowing nothing of their meaning.
 *
 * Source: OGC 18-010r7 (ISO 19162:2019), Geographic information: Well-known text representation of coordinate reference
 * systems, clause 6.
 */
import { refuse, type Refusal } from '../../quantities/refusal.ts';

export interface WktNode {
  /** The keyword, in capital letters. */
  readonly word: string;
  readonly texts: readonly string[];
  readonly numbers: readonly number[];
  readonly nodes: readonly WktNode[];
}

export function readWkt(text: string): WktNode | Refusal {
  if (text.length > LONGEST) return refuse('The definition is longer than any coordinate system needs.');
  const tokens = text.match(/"(?:[^"]|"")*"|[[\](),]|[^\s[\](),"]+/g) ?? [];
  const reader = { tokens, at: 0 };
  const node = readNode(reader, 0);
  if (node === undefined || reader.at !== tokens.length)
    return refuse('The definition is not whole well-known text: a bracket, a comma or a quote is missing.');
  return node;
}

/** The first child with one of the words. */
export const childOf = (node: WktNode, ...words: readonly string[]): WktNode | undefined =>
  node.nodes.find(({ word }) => words.includes(word));

/** All children with one of the words. */
export const childrenOf = (node: WktNode, ...words: readonly string[]): readonly WktNode[] =>
  node.nodes.filter(({ word }) => words.includes(word));

const LONGEST = 65_536;
const DEEPEST = 20;

interface Reader {
  readonly tokens: readonly string[];
  at: number;
}

function readNode(reader: Reader, depth: number): WktNode | undefined {
  const word = reader.tokens[reader.at++]?.toUpperCase();
  const open = reader.tokens[reader.at++];
  if (word === undefined || !/^[A-Z]\w*$/.test(word) || depth > DEEPEST) return undefined;
  if (open !== '[' && open !== '(') return undefined;
  const texts: string[] = [];
  const numbers: number[] = [];
  const nodes: WktNode[] = [];
  for (;;) {
    const token = reader.tokens[reader.at];
    if (token === undefined) return undefined;
    const next = reader.tokens[reader.at + 1];
    if (token.startsWith('"')) {
      texts.push(token.slice(1, -1).replaceAll('""', '"'));
      reader.at++;
    } else if (next === '[' || next === '(') {
      const child = readNode(reader, depth + 1);
      if (child === undefined) return undefined;
      nodes.push(child);
    } else {
      const value = Number(token);
      if (Number.isNaN(value)) texts.push(token);
      else numbers.push(value);
      reader.at++;
    }
    const after = reader.tokens[reader.at++];
    if (after === (open === '[' ? ']' : ')')) return { word, texts, numbers, nodes };
    if (after !== ',') return undefined;
  }
}
