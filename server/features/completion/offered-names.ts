/** Names that may stand at the cursor, each with its coordinates or dimensions beside it. */
import type { Inspection } from '../../inspect.ts';
import type { Session } from '../../session/session.ts';
import { summaryOf } from '../about-name.ts';
import { USUAL_POINTS, written, type NameKind } from '../names.ts';
import type { Before, Offer } from './completion.ts';

/** Null where no name belongs. */
export function offeredNames(before: Before, inspection: Inspection): Offer[] | null {
  const kind = kindWanted(before);
  if (!kind) return null;
  if (kind === 'reached') return [...usual(before), ...tapePoints(before, inspection)];
  if (kind === 'arp') return usual(before).filter(({ label }) => label === 'arp');
  if (kind === 'against') return [...sides(before), ...others(named('surface', before, inspection), before)];
  if (kind === 'person') return persons(before, inspection);
  return named(kind, before, inspection);
}

type Wanted = NameKind | 'reached' | 'arp' | 'against' | 'person';

/** Lines that say where something is, whose `by` names a transformation. */
const PLACING = ['position', 'keyed', 'observed', 'autonomous', 'datum'];

function kindWanted({ word, leading, cursor }: Before): Wanted | null {
  if (leading === 'on') return word === 'setup' || word === 'check' ? 'mark' : 'setup';
  if (leading === 'with' || leading === 'antenna-type') return 'antenna';
  if (leading === 'by') {
    if (PLACING.includes(word)) return null;
    return word === 'measured' || cursor.bound.kind === 'correction' ? 'person' : 'rover';
  }
  if (leading === 'observer' || leading === 'review') return 'person';
  if (leading === 'from') return word === 'observed' ? null : 'setup';
  if (leading === 'to') return 'reached';
  if (leading !== 'above' && leading !== 'below') return null;
  if (word === 'phase-centre' || word === 'tape-point') return 'arp';
  return word === 'offset' ? 'against' : 'surface';
}

/** Who is named in these notes already. */
function persons({ start }: Before, { session }: Inspection): Offer[] {
  const observer = session.job?.observer?.text;
  const reading = [...session.setups.values()].flatMap(({ measured }) =>
    measured.flatMap(({ by }) => (by ? [by.name] : [])),
  );
  const signing = session.corrections.flatMap(({ by }) => (by ? [by.name] : []));
  const reviewing = session.reviews.map(({ by }) => by);
  const names = new Set([...(observer ? [observer] : []), ...reading, ...signing, ...reviewing]);
  return [...names]
    .filter((name) => name !== '')
    .map((name) => {
      const text = `"${name.replaceAll('"', '""')}"`;
      return { kind: 'name', label: text, beside: 'named in these notes', text, start };
    });
}

/** A surface does not stand on itself. */
const others = (offers: Offer[], { cursor: { bound } }: Before) =>
  offers.filter(({ label }) => bound.kind !== 'surface' || label !== bound.name);

function named(kind: NameKind, { start }: Before, inspection: Inspection): Offer[] {
  return namesOf(kind, inspection.session).map((name) => ({
    kind: 'name',
    label: name,
    beside: summaryOf(kind, name, inspection).join(' · '),
    text: written(name),
    start,
    means: { kind, name, of: null },
  }));
}

function namesOf(kind: NameKind, session: Session): string[] {
  const tables = {
    mark: session.marks,
    antenna: session.antennas,
    rover: session.rovers,
    surface: session.surfaces,
    ground: session.grounds,
    setup: session.setups,
  };
  return kind in tables ? [...tables[kind as keyof typeof tables].keys()] : [];
}

/** Points that every antenna has. */
export const POINTS: Readonly<Record<string, string>> = {
  arp: 'the antenna reference point',
  foot: 'the foot of the extension, or of the antenna',
  hook: 'the tape hook of the antenna',
  'phase-centre': 'the mean phase centre of the antenna',
};

const usual = ({ word, start }: Before): Offer[] =>
  USUAL_POINTS.filter((name) => word === 'measured' || name === 'arp' || name === 'phase-centre').map(
    (name) => ({
      kind: 'value',
      label: name,
      beside: POINTS[name] ?? '',
      text: name,
      start,
    }),
  );

/** Tape points of the antenna that the setup stands with. */
function tapePoints({ cursor, start }: Before, inspection: Inspection): Offer[] {
  const { bound } = cursor;
  const antenna =
    bound.kind === 'setup' ? inspection.session.antennas.get(bound.with?.name ?? '') : undefined;
  return (antenna?.tapePoints ?? []).map(({ name }) => ({
    kind: 'name',
    label: name,
    beside: summaryOf('tape-point', name, inspection, antenna?.name ?? null).join(' · '),
    text: written(name),
    start,
    means: { kind: 'tape-point', name, of: antenna?.name ?? null },
  }));
}

const sides = ({ start }: Before): Offer[] =>
  [
    ['orthometric', 'the geoid or levelling datum'],
    ['ellipsoidal', 'the ellipsoid'],
  ].map(([name = '', beside = '']) => ({ kind: 'value', label: name, beside, text: name, start }));
