/** What a session file consists of, as plain readonly data; every place is counted from its entry's first character. */

/** A stretch of text in UTF-16 units from the start of its entry; `end` lies behind the last one. */
export interface Span {
  readonly start: number;
  readonly end: number;
}

/**
 * A line that opens in the first column, with the details below it; it keeps its identity as long as its text does.
 * What stands before a file's first entry is an entry with an empty header.
 */
export interface Entry {
  readonly text: string;
  readonly header: Line;
  readonly details: readonly Line[];
  readonly slips: readonly Slip[];
  /** The program failed over this text, which then says nothing; what it said of that. */
  readonly fault?: string;
}

/** One line without its blanks and comment: the first word and what follows it. */
export interface Line extends Span {
  readonly word: Word | null;
  readonly items: readonly Item[];
  readonly comment: Span | null;
  /** Blanks stand before the first word. */
  readonly indented: boolean;
}

export type Item = Text | Name | Word | Sum | Time | IsoDate | Mark | Junk;

/** Text between double quotes, the doubled ones inside read as one. */
export interface Text extends Span {
  readonly kind: 'text';
  readonly text: string;
}
/** What stands in a name's place, whatever it looks like. */
export interface Name extends Span {
  readonly kind: 'name';
  readonly name: string;
}
export interface Word extends Span {
  readonly kind: 'word';
  readonly word: string;
}
export interface Mark extends Span {
  readonly kind: 'comma' | 'slash';
}
/** Characters that mean nothing where they stand. */
export interface Junk extends Span {
  readonly kind: 'junk';
  readonly text: string;
}
/** `H:MM`, `HH:MM[:SS[.s]]`, with `Z` for UTC; `seconds` counts from midnight and is null where no clock shows it. */
export interface Time extends Span {
  readonly kind: 'time';
  readonly seconds: number | null;
  readonly utc: boolean;
  readonly typed: string;
}
/** `YYYY-MM-DD`; `day` counts from 1970-01-01 and is null where no calendar has it. */
export interface IsoDate extends Span {
  readonly kind: 'date';
  readonly day: number | null;
  readonly typed: string;
}

/** Quantities added and subtracted, each with its own uncertainty and label; most often a single one. */
export interface Sum extends Span {
  readonly kind: 'sum';
  readonly terms: readonly Term[];
}
export interface Term extends Span {
  readonly sign: 1 | -1;
  /** Null where only an uncertainty is given: `± 1 mm`. */
  readonly measure: Measure | null;
  readonly uncertainty: Measure | null;
  readonly label: Text | null;
}
/** A number with its unit, or with several in a row: `5 ft 2 in`, `41°09'08.2"`. */
export interface Measure extends Span {
  /** Null where no sign was typed. */
  readonly sign: '+' | '-' | null;
  readonly parts: readonly Part[];
}
export interface Part extends Span {
  readonly numeral: Numeral;
  readonly unit: UnitMark | null;
}
/**
 * Digits as typed beside their value, which is null for `?`, for what can be read in more than one way, and for what
 * is no number. Such a hole has a slip of the same span, unless it is open or packed: `41-09-08.18`, `19.5.2026`.
 */
export interface Numeral extends Span {
  readonly typed: string;
  readonly value: number | null;
  /** `?`: a hole that the writer knows of. */
  readonly open: boolean;
}
export interface UnitMark extends Span {
  readonly unit: string;
}

/** Something wrong with the letters alone, whatever they mean. */
export interface Slip extends Span {
  readonly slip:
    | 'unclosed-text'
    | 'invisible-character'
    | 'bidirectional-control'
    | 'look-alike'
    | 'decimal-comma'
    | 'grouped-digits'
    | 'exponent'
    | 'bare-point'
    | 'broken-number'
    | 'too-large';
  readonly typed: string;
  /** What the writer may have meant; each is a whole replacement of the span. */
  readonly readings: readonly string[];
}

/** Where something stands: the file, the entry in it, and the stretch inside the entry. */
export interface Place extends Span {
  readonly path: string;
  readonly entry: Entry;
}
