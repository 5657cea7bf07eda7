/** Elements of HTML and SVG as trees that can only be written escaped, so that text from a session stays text. */

/** Finished markup; a plain string is never one, and is escaped wherever it is put in. */
export interface Markup {
  readonly markup: string;
  /** The words that a drawing shows, as typed. */
  readonly texts: readonly string[];
}

export type Child = Markup | string | null | readonly Child[];
export type Attributes = Readonly<Record<string, string | number | null>>;

/** Attributes that are null are left out; numbers are written to a hundredth. */
export function element(name: string, attributes: Attributes = {}, ...children: Child[]): Markup {
  const written = Object.entries(attributes)
    .filter(([, value]) => value !== null)
    .map(([key, value]) => ` ${key}="${escaped(typeof value === 'number' ? rounded(value) : (value ?? ''))}"`)
    .join('');
  if (VOID.has(name)) return { markup: `<${name}${written}>`, texts: [] };
  const inside = group(...children);
  const texts = name === 'text' ? children.filter((child) => typeof child === 'string') : inside.texts;
  return { markup: `<${name}${written}>${inside.markup}</${name}>`, texts };
}

const VOID: ReadonlySet<string> = new Set(['meta', 'br', 'hr']);

/** A style sheet of our own; nothing from a session may ever be part of it. */
export const styleSheet = (css: string): Markup => ({ markup: `<style>${css}</style>`, texts: [] });

export const group = (...children: Child[]): Markup => ({
  markup: children.map(markupOf).join(''),
  texts: children.flatMap(textsIn),
});

/** What is drawn as text further inside. */
export const textsIn = (child: Child): readonly string[] =>
  child === null || typeof child === 'string' ? [] : 'markup' in child ? child.texts : child.flatMap(textsIn);

function markupOf(child: Child): string {
  if (child === null) return '';
  if (typeof child === 'string') return escaped(child);
  return 'markup' in child ? child.markup : child.map(markupOf).join('');
}

/** Text that shows as it was typed: no markup, no control characters, nothing that turns the direction of writing. */
export function escaped(text: string): string {
  return harmless(text).replace(/[&<>"'`]/g, (character) => `&#${character.charCodeAt(0)};`);
}

/** Control characters, halves of characters and controls of writing direction become a visible replacement. */
export const harmless = (text: string): string =>
  text.replace(/\p{Cc}|\p{Cs}|[\u061c\u200e\u200f\u2028-\u202e\u2066-\u2069\ufffe\uffff]/gu, (character) =>
    character === '\n' || character === '\t' ? character : '\ufffd',
  );

export const rounded = (value: number): string =>
  Number.isFinite(value) ? String(Math.round(value * 100) / 100) : '0';
