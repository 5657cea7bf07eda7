/** What is odd about how something is written, noticed while a session is read and told by the findings. */
import type { Slip } from '../../grammar/tree.ts';
import type { Place } from '../../grammar/tree.ts';

/** Kinds of things that names stand for. */
export type NamedKind =
  'mark' | 'antenna' | 'rover' | 'surface' | 'ground' | 'setup' | 'check' | 'point' | 'radio';

export type Remark = { readonly place: Place } & (
  | { readonly about: 'letters'; readonly slip: Slip }
  | {
      readonly about: 'unknown-word';
      readonly typed: string;
      readonly near: readonly string[];
      readonly opens: boolean;
    }
  | {
      readonly about: 'misplaced-detail';
      readonly word: string;
      readonly entry: string;
      readonly belongs: readonly string[];
    }
  | { readonly about: 'indent'; readonly word: string; readonly opens: boolean }
  | { readonly about: 'letter-case'; readonly typed: string; readonly word: string }
  | { readonly about: 'repeated'; readonly word: string; readonly first: Place; readonly same: boolean }
  | { readonly about: 'missing-value'; readonly word: string; readonly expects: string }
  | {
      readonly about: 'leftover';
      readonly typed: string;
      readonly near: readonly string[];
      /** What would be text of the line, had it its quotes. */
      readonly text?: Place;
    }
  | {
      readonly about: 'unit-missing';
      readonly typed: string;
      readonly measures: string;
      readonly readings: readonly string[];
    }
  | { readonly about: 'unit-slip'; readonly typed: string; readonly readings: readonly string[] }
  | {
      readonly about: 'unit-wrong';
      readonly typed: string;
      readonly measures: string;
      readonly wanted: string;
      readonly readings: readonly string[];
    }
  | { readonly about: 'angle-packed'; readonly typed: string; readonly readings: readonly string[] }
  | { readonly about: 'angle-range'; readonly typed: string; readonly limit: string }
  | { readonly about: 'angle-sign'; readonly typed: string; readonly readings: readonly string[] }
  | { readonly about: 'hemisphere'; readonly typed: string; readonly readings: readonly string[] }
  | { readonly about: 'date-format'; readonly typed: string; readonly readings: readonly string[] }
  | { readonly about: 'time-impossible'; readonly typed: string }
  | { readonly about: 'time-style'; readonly typed: string; readonly readings: readonly string[] }
  | { readonly about: 'open-value'; readonly word: string }
  | { readonly about: 'no-surface'; readonly typed: string; readonly readings: readonly string[] }
  | {
      readonly about: 'unknown-name';
      readonly kind: NamedKind;
      readonly name: string;
      readonly near: readonly string[];
    }
  | {
      readonly about: 'duplicate-name';
      readonly kind: NamedKind;
      readonly name: string;
      readonly first: Place;
    }
  | {
      readonly about: 'value-range';
      readonly word: string;
      readonly typed: string;
      readonly allowed: string;
      /** The words that it can be, where they are a few. */
      readonly among?: readonly string[];
    }
  | { readonly about: 'fault'; readonly because: string }
  | { readonly about: 'unreadable-file'; readonly path: string; readonly because: string }
);

export type RemarkAbout = Remark['about'];
export type RemarkOf<About extends RemarkAbout> = Extract<Remark, { readonly about: About }>;
