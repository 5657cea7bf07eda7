/** Everything that is printed passes here, to either stream: no character of a file or a name steers a terminal. */
import type { Io, Printed } from './io.ts';
import { harmless } from './terminal-text.ts';

export const steady = (io: Io): Io => ({
  ...io,
  print: (text, as = 'text') => io.print(shown(text, as, io)),
  complain: (text) => io.complain(shownLines(text, OWN_SIGNS)),
});

function shown(text: string, as: Printed, { terminal, colours }: Io): string {
  if (as === 'json') return escapedJson(text);
  if (as === 'file' && !terminal) return text;
  return shownLines(text, colours ? COLOURS : NOTHING);
}

/* eslint-disable no-control-regex -- these are what is looked for */

/** What the program itself says to a terminal: its colours, and a line of progress that is written over. */
const COLOURS = /(\u001b\[(?:0|1|2|22|31|32|33|36|39)m)/;
const OWN_SIGNS = /(\r?\u001b\[K|\r(?=\d))/;
const NOTHING = /(?!)/;

function shownLines(text: string, own: RegExp): string {
  if (!STEERING.test(text)) return text;
  return text
    .split(own)
    .map((part, index) => (index % 2 === 1 ? part : part.replace(/[^\n]+/g, harmless)))
    .join('');
}
const STEERING = /[\u0000-\u0009\u000b-\u001f\u007f-\u009f\u061c\u200e\u200f\u2028-\u202e\u2066-\u2069]/;

/** The same JSON; such characters stand in strings only, and those below a blank are escaped already. */
const escapedJson = (text: string) =>
  text.replace(
    /[\u007f-\u009f\u061c\u200e\u200f\u2028-\u202e\u2066-\u2069]/g,
    (character) => `\\u${character.charCodeAt(0).toString(16).padStart(4, '0')}`,
  );
