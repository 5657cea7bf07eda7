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
  if (kind === 'against') return [...sides(before), ...named('surface', before, inspection)];
  return named(kind, before, inspection);
}

type Wanted = NameKind | 'reached' | 'against';

function kindWanted({ word, leading }: Before): Wanted | null {
  if (leading === 'on') return word === 'setup' || word === 'check' ? 'mark' : 'setup';
  if (leading === 'with' || leading === 'antenna-type') return 'antenna';
  if (leading === 'by')
    return word === 'measured' ? null : word === 'by' || word !== 'correction' ? 'rover' : null;
  if (leading === 'from') return word === 'observed' ? null : 'setup';
  if (leading === 'to') return 'reached';
  if (leading === 'above' || leading === 'below') return 'against';
  return null;
}

function named(kind: NameKind, { start }: Before, inspection: Inspection): Offer[] {
  return namesOf(kind, inspection.session).map((name) => ({
    kind: 'name',
    label: name,
    beside: summaryOf(kind, name, inspection).join(' · '),
    text: written(name),
    start,
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

const POINTS: Readonly<Record<string, string>> = {
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
  }));
}

/** An antenna's points lie above its ARP; heights stand on surfaces. */
const sides = ({ word, start }: Before): Offer[] =>
  (word === 'phase-centre' || word === 'tape-point' ? ['arp'] : ['orthometric', 'ellipsoidal']).map(
    (name) => ({
      kind: 'value',
      label: name,
      beside: POINTS[name] ?? (name === 'orthometric' ? 'the geoid or levelling datum' : 'the ellipsoid'),
      text: name,
      start,
    }),
  );
