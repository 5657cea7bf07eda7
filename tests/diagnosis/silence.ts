/**
 * One number spoiled in a good day: either a finding names its line, or nothing that somebody relies on depends on it.
 * Counted over every number of every good sample and every way to spoil it.
 */
import { openDocument } from '../../grammar/document.ts';
import { inspect, type Inspection } from '../../server/inspect.ts';
import { whereIs } from '../../server/session/where.ts';
import type { Files } from '../../server/session/files.ts';
import { withoutMarkers } from '../markers.ts';
import { cleanSamples, filesOnDisk } from '../samples.ts';
import { differing, outcomeOf, type Outcome } from './outcome.ts';
import { spoiledTexts, type Harm, type Spoiled } from './spoiled-numbers.ts';

export interface Judged {
  readonly sample: string;
  /** The file that the number stands in: the sample, or one that it uses. */
  readonly file: string;
  readonly spoiled: Spoiled;
  /** `nothing`: no result depends on it; `line`: a new finding names the line; `elsewhere`: only findings on other lines are new. */
  readonly answer: 'nothing' | 'line' | 'elsewhere' | 'silent';
  readonly depends: readonly string[];
  /** Codes of what is new. */
  readonly told: readonly string[];
}

/** A day as it is good, in the file that a number of it stands in. */
export interface GoodDay {
  readonly sample: string;
  readonly file: string;
  readonly text: string;
  readonly said: ReadonlySet<string>;
  readonly outcome: Outcome;
  readonly inspected: (text: string) => Inspection;
}

/** Every good sample, and every file that one uses, once for each of them. A file of marks alone has no result. */
export function goodDays(): GoodDay[] {
  const files = filesOnDisk();
  return cleanSamples().flatMap(({ file, text }) => {
    const plain = withoutMarkers(text);
    const good = inspect(openDocument(file, plain), files);
    if (good.derivation.setups.size === 0) return [];
    const used = [...good.session.documents.values()];
    return used.map((document): GoodDay => {
      const inspected = (changed: string) =>
        document.path === file
          ? inspect(openDocument(file, changed), files)
          : inspect(openDocument(file, plain), withDocument(files, document.path, changed));
      const own = document.path === file ? plain : document.text;
      const day = inspected(own);
      return {
        sample: file,
        file: document.path,
        text: own,
        said: new Set(saidBy(day).keys()),
        outcome: outcomeOf(day),
        inspected,
      };
    });
  });
}

const withDocument = (files: Files, changed: string, text: string): Files => ({
  bytes: files.bytes,
  document: (path) => (path === changed ? openDocument(path, text) : files.document(path)),
});

export function judged(day: GoodDay, spoiled: Spoiled): Judged {
  const inspection = day.inspected(spoiled.text);
  const depends = differing(day.outcome, outcomeOf(inspection));
  const fresh = [...saidBy(inspection)].filter(([said]) => !day.said.has(said));
  const onLine = fresh.some(([, lines]) => lines.has(`${day.file}:${String(spoiled.line)}`));
  const told = [...new Set(fresh.map(([said]) => said.replace(/ .*/s, '')))];
  const answer =
    depends.length === 0 ? 'nothing' : onLine ? 'line' : fresh.length > 0 ? 'elsewhere' : 'silent';
  return { sample: day.sample, file: day.file, spoiled, answer, depends, told };
}

/** What is said, with the lines that it names: its own, those that it rests on, and those in its words. */
function saidBy({ session, findings }: Inspection): Map<string, Set<string>> {
  const said = new Map<string, Set<string>>();
  const lineOf = (place: (typeof findings)[number]['place']) => {
    const { path, line } = whereIs(session, place);
    return `${path}:${String(line)}`;
  };
  for (const { code, place, message, related } of findings) {
    const words = [message, ...related.map((one) => one.message)];
    const lines = [place, ...related.map((one) => one.place)].map(lineOf);
    const named = words.flatMap((text) => [...text.matchAll(/\bline (\d+)/g)].map(([, line]) => line));
    const own = session.document.path;
    said.set(
      `${code} ${lines.join()} ${words.join()}`,
      new Set([...lines, ...named.map((line) => `${own}:${line ?? ''}`)]),
    );
  }
  return said;
}

/** All of them, or every so manieth. */
export function silenceOf(days: readonly GoodDay[], step = 1): Judged[] {
  return days.flatMap((day) =>
    spoiledTexts(openDocument(day.file, day.text))
      .filter((_, index) => index % step === 0)
      .map((spoiled) => judged(day, spoiled)),
  );
}

const HARMS: readonly Harm[] = [
  'digits swapped',
  'digit dropped',
  'digit doubled',
  'sign',
  'unit',
  'column',
  'thousandfold',
];

/** A row a kind of number: how many ways to spoil it, of how many of them the result depends, what is told of those. */
export function silenceTable(all: readonly Judged[]): string {
  const kinds = [...new Set(all.map(({ spoiled }) => spoiled.kind))].sort();
  const head = [
    '| number | ways | the result depends | a finding names the line | only others are told | silent | |',
    '|---|--:|--:|--:|--:|--:|---|',
  ];
  const row = (name: string, own: readonly Judged[]) => {
    const count = (answer: Judged['answer']) => own.filter((one) => one.answer === answer).length;
    const depends = own.length - count('nothing');
    const silent = count('silent');
    const share = depends === 0 ? '–' : `${((100 * silent) / depends).toFixed(1)} %`;
    const how = HARMS.flatMap((harm) => {
      const many = own.filter(({ answer, spoiled }) => answer === 'silent' && spoiled.how === harm).length;
      return many === 0 ? [] : [`${harm} ${String(many)}`];
    });
    return `| ${[name, own.length, depends, count('line'), count('elsewhere'), `${String(silent)} (${share})`, how.join(', ')].join(' | ')} |`;
  };
  return [
    ...head,
    ...kinds.map((kind) =>
      row(
        kind,
        all.filter(({ spoiled }) => spoiled.kind === kind),
      ),
    ),
    row('**all**', all),
  ].join('\n');
}

export const inWords = ({ sample, file, spoiled, answer, depends, told }: Judged): string =>
  `${answer}: ${file}:${String(spoiled.line)}${file === sample ? '' : ` (in ${sample})`} ${spoiled.kind}, ${spoiled.how}: ${spoiled.before} → ${spoiled.after}; changes ${depends.slice(0, 4).join(', ')}${depends.length > 4 ? ' …' : ''}${told.length > 0 ? `; told ${told.join(', ')}` : ''}`;
