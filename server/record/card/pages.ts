/** The pages that an editor shows beside a session, as plain text: what to key, what is wrong, every derived value. */
import { listCheck, listLinks, listMark, listSetup, type Listed } from '../../derive/listing.ts';
import type { Finding } from '../../findings/finding.ts';
import { belowHeadline } from '../../findings/saying.ts';
import type { Inspection } from '../../inspect.ts';
import { showAngle, showValue } from '../../quantities/show.ts';
import { isHole, type Value } from '../../quantities/value.ts';
import { whereIs } from '../../session/where.ts';
import { CAUTIONS, keyCard, type KeyCard, type KeyLine } from './key-card.ts';
import { verdictOf } from '../verdict.ts';

export function keyCardPage(inspection: Inspection): string {
  const cards = [...inspection.derivation.setups.values()].map((values) => keyCard(values, inspection));
  if (cards.length === 0) return 'There is no setup yet, so there is nothing to key.\n';
  return paragraphs([...cards.flatMap(cardParagraphs), CAUTIONS]);
}

function cardParagraphs(card: KeyCard): string[] {
  const broadcast = ['Antenna position in messages 1005 and 1006', ...card.broadcast.map(keyLine)];
  return [
    card.mark === null ? card.setup : `${card.setup} on ${card.mark}`,
    card.lines.map(keyLine).join('\n'),
    ...(card.broadcast.some(({ value }) => value === null) ? [] : [broadcast.join('\n')]),
    ...card.warnings,
  ];
}

const keyLine = ({ label, value, note }: KeyLine) =>
  `  ${label.padEnd(LABEL)} ${(value ?? '?').padEnd(NUMBER)} ${note}`.trimEnd();
const LABEL = 20;
const NUMBER = 20;

export function checkPage(inspection: Inspection): string {
  const { sentence, next } = verdictOf(inspection);
  const found = inspection.findings.map((finding) => findingParagraph(finding, inspection));
  const none = found.length === 0 ? ['Nothing is found wrong.'] : [];
  return paragraphs([
    ...(sentence === null ? [] : [sentence]),
    ...(next === null ? [] : [`Next: ${next}`]),
    ...found,
    ...none,
  ]);
}

function findingParagraph(finding: Finding, { session }: Inspection): string {
  const { code, severity, headline, place, related } = finding;
  const tell = (at: Finding['place']) => {
    const { path, line } = whereIs(session, at);
    return path === session.document.path ? `line ${line}` : `line ${line} of ${path}`;
  };
  const following = related.map((one) => `  ${tell(one.place)}: ${one.headline}`);
  const below = belowHeadline(finding);
  return [
    `${tell(place)}, ${severity}: ${headline}`,
    ...(below === '' ? [] : [`  ${below}`]),
    ...following,
    `  ${code}`,
  ].join('\n');
}

export function valuesPage({ derivation }: Inspection): string {
  const { marks, setups, checks, link } = derivation;
  const groups = [
    ...[...marks.values()].map(listMark),
    ...[...setups.values()].map(listSetup),
    ...checks.map(listCheck),
    ...listLinks(link),
  ];
  if (groups.length === 0) return 'There is no mark, setup or check yet, so nothing is derived.\n';
  return paragraphs(groups.map((group) => group.map(valueLine).join('\n')));
}

const valueLine = ({ id, value }: Listed) =>
  `${id.padEnd(ID)} ${isHole(value) ? `not known: ${value.hole}` : shown(value)}`;
const ID = 36;

function shown(value: Value): string {
  if (value.unit !== '°' || !/^(latitude|longitude)/.test(value.name)) return showValue(value);
  return showAngle(value.value, value.name.startsWith('latitude') ? 'N' : 'E');
}

const paragraphs = (texts: readonly string[]) => `${texts.join('\n\n')}\n`;
