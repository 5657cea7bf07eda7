/** What the extension and the page of its key card tell one another. */

export type ToCard =
  /** The address is what the page remembers, so that the panel comes back with the editor. */
  | {
      readonly kind: 'card';
      readonly session: string;
      readonly address: string;
      readonly html: string;
      /** The setup that the cursor's line is about. */
      readonly here: string | null;
    }
  | { readonly kind: 'trouble'; readonly sentence: string };

export type FromCard =
  /** The page is there and can be told. */
  | { readonly kind: 'ready' }
  | { readonly kind: 'copy'; readonly text: string }
  | { readonly kind: 'print' }
  /** The focus goes back to the text. */
  | { readonly kind: 'leave' };
