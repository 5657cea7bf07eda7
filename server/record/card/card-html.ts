/** The key card as markup: for the panel beside the text, the page for a phone, and a page of its own to print. */
import type { Inspection } from '../../inspect.ts';
import { element, group, styleSheet, type Child, type Markup } from '../drawings/markup.ts';
import { CARD_STYLE } from './card-style.ts';
import { digitGroups, isLength, withoutUnit } from './digit-groups.ts';
import { CAUTIONS, keyCard, type KeyCard, type KeyLine } from './key-card.ts';

/** Each setup's card in the order of the notes; the text of a session is never more than text in it. */
export function cardsHtml(inspection: Inspection): string {
  const cards = [...inspection.derivation.setups.values()].map((values) => keyCard(values, inspection));
  return group(
    ...(cards.length === 0 ? [element('p', {}, 'No setup is noted yet, so there is nothing to key.')] : []),
    ...cards.map(cardSection),
    ...(cards.length === 0 ? [] : [element('p', { class: 'card-cautions' }, CAUTIONS)]),
  ).markup;
}

/** A whole document that needs nothing but itself, to print or to keep. */
export function cardDocument(inspection: Inspection, title: string): string {
  const cards: Markup = { markup: cardsHtml(inspection), texts: [] };
  const head = element(
    'head',
    {},
    element('meta', { charset: 'utf-8' }),
    element('meta', { name: 'viewport', content: 'width=device-width, initial-scale=1' }),
    element('meta', {
      'http-equiv': 'Content-Security-Policy',
      content: "default-src 'none'; style-src 'unsafe-inline'",
    }),
    element('meta', { name: 'color-scheme', content: 'light dark' }),
    element('title', {}, `What to key: ${title}`),
    styleSheet(
      `body{font-family:system-ui,sans-serif;max-width:46rem;margin:1rem auto;padding:0 1rem}${CARD_STYLE}`,
    ),
  );
  const body = element('body', { class: 'card-page' }, element('h1', {}, `What to key: ${title}`), cards);
  return `<!doctype html>\n${element('html', { lang: 'en' }, head, body).markup}\n`;
}

function cardSection(card: KeyCard): Markup {
  const known = card.broadcast.some(({ value }) => value !== null);
  return element(
    'section',
    { class: 'card', 'data-setup': card.setup, 'aria-label': `What to key at ${card.setup}` },
    element('h2', {}, card.setup, element('span', { class: 'card-mark' }, ` on ${card.mark}`)),
    ...card.warnings.map((warning) => element('p', { class: 'card-warning' }, warning)),
    keyLines(card.lines, 'card-lines', card.setup),
    known ? element('h3', {}, 'Antenna as broadcast (messages 1005 and 1006)') : null,
    known ? keyLines(card.broadcast, 'card-lines card-lesser', card.setup) : null,
  );
}

const keyLines = (lines: readonly KeyLine[], manner: string, setup: string): Markup =>
  element('dl', { class: manner }, ...lines.map((line) => keyLine(line, setup)));

function keyLine({ label, value, note, keyed }: KeyLine, setup: string): Markup {
  const state = keyed === null ? '' : keyed.difference === '' ? ' card-agrees' : ' card-differs';
  return element(
    'div',
    { class: `card-line${state}` },
    element('dt', {}, label),
    value === null
      ? element('dd', { class: 'card-figure card-unknown' }, 'not known')
      : element(
          'dd',
          { class: isNumber(value) ? 'card-figure' : 'card-figure card-words' },
          ...figure(value),
          copyButton(label, value, setup),
        ),
    keyed === null ? null : element('dd', { class: 'card-keyed' }, ...besideOf(keyed)),
    note === '' ? null : element('dd', { class: 'card-note' }, note),
  );
}

const isNumber = (value: string) => isLength(value) || /["'°][NSEW]$/.test(value);

const besideOf = ({ typed, difference }: NonNullable<KeyLine['keyed']>): Child[] =>
  difference === ''
    ? [`✓ keyed ${typed}, agrees`]
    : [`✗ keyed ${typed}: `, element('strong', {}, difference)];

/** The digits stand in groups for the eye; who hears the page hears the number whole. */
const figure = (value: string): Child[] => [
  element(
    'span',
    { 'aria-hidden': 'true' },
    ...digitGroups(value).map((digits) => element('span', { class: 'card-group' }, digits)),
  ),
  element('span', { class: 'card-unseen' }, value),
];

/** A receiver wants the number without its unit. */
const copyButton = (label: string, value: string, setup: string): Markup =>
  element(
    'button',
    {
      type: 'button',
      class: 'card-copy',
      'data-copy': withoutUnit(value).replaceAll('−', '-'),
      'aria-label': `Copy ${label.toLowerCase()} of ${setup}: ${value}`,
    },
    'Copy',
  );
