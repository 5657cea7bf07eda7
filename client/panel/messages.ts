/** What the extension and the page of its drawings tell one another. */
import type { SessionDrawings } from '../../server/record/session-drawings.ts';

export interface Line {
  /** As the server speaks of files. */
  readonly path: string;
  /** From 1. */
  readonly line: number;
}

export type ToPage =
  | ({ readonly kind: 'drawings'; readonly session: string } & SessionDrawings)
  /** Where the cursor is: its line, and the first line of the entry around it. */
  | ({ readonly kind: 'cursor'; readonly entry: number } & Line)
  | { readonly kind: 'trouble'; readonly sentence: string };

export type FromPage =
  /** The width that there is for drawings, in pixels; said first when the page is there. */
  { readonly kind: 'width'; readonly width: number } | ({ readonly kind: 'goTo' } & Line);
