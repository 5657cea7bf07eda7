/** What the extension and the page of its drawings tell one another. */
import type { SessionDrawings } from '../../server/record/drawings/session-drawings.ts';

export interface Line {
  /** As the server speaks of files. */
  readonly path: string;
  /** From 1. */
  readonly line: number;
}

export type ToPage =
  /** The address is what the page remembers, so that the panel comes back with the editor. */
  | ({ readonly kind: 'drawings'; readonly session: string; readonly address: string } & SessionDrawings)
  /** Where the cursor is: its line, and the first line of the entry around it. */
  | ({ readonly kind: 'cursor'; readonly entry: number } & Line)
  | { readonly kind: 'trouble'; readonly sentence: string };

export type FromPage =
  /** The width that there is for drawings, in pixels; said first when the page is there. */
  | { readonly kind: 'width'; readonly width: number }
  | ({ readonly kind: 'goTo' } & Line)
  /** The focus goes back to the text. */
  | { readonly kind: 'leave' };

/** What is left of a panel when the editor is started again. */
export interface Remembered {
  readonly address: string;
}
