/** What a reader wants to know of a thing when its name is under the pointer, or offered for completion. */
import type { MarkValues } from '../derive/marks/mark.ts';
import type { Inspection } from '../inspect.ts';
import { showAngle, showNumber } from '../quantities/show.ts';
import { isHole, type Maybe, type Value } from '../quantities/value.ts';
import type { HoverBlock } from './hover.ts';
import { declarationOf, type NameUse } from './names.ts';
import { whereIs } from '../session/where.ts';

export function aboutName(use: NameUse, inspection: Inspection): HoverBlock[] {
  const { session } = inspection;
  const declaration = declarationOf(session, use);
  if (!declaration) return [];
  const { path, line } = whereIs(session, declaration.place);
  const file = path === session.document.path ? '' : ` of ${path.split('/').at(-1) ?? path}`;
  const summary = summaryOf(use.kind, use.name, inspection, use.of);
  const text = [`${use.kind} ${use.name}`, ...summary, `written down in line ${line}${file}`].join(' · ');
  return [{ kind: 'says', text }];
}

/** Coordinates, heights or dimensions, in a few words each. */
export function summaryOf(
  kind: NameUse['kind'],
  name: string,
  { session, derivation }: Inspection,
  of: string | null = null,
): string[] {
  switch (kind) {
    case 'mark':
      return markSummary(derivation.marks.get(name));
    case 'antenna': {
      const antenna = session.antennas.get(name);
      return [
        ...told(antenna?.description),
        ...length('phase centre', antenna?.phaseCentre, 'above the ARP'),
      ];
    }
    case 'tape-point': {
      const antenna = session.antennas.get(of ?? '');
      const point = antenna?.tapePoints.find((candidate) => candidate.name === name);
      return [...length('radius', point?.radius), ...length('', point?.above, 'above the ARP')];
    }
    case 'rover': {
      const rover = session.rovers.get(name);
      return [...told(rover?.description), ...length('pole', rover?.pole?.length)];
    }
    case 'surface':
      return told(session.surfaces.get(name)?.description);
    case 'ground':
      return told(session.grounds.get(name)?.description);
    case 'setup': {
      const values = derivation.setups.get(name);
      const on = values?.setup.on ? [`on ${values.setup.on.name}`] : [];
      return [...on, ...length('ARP', values?.height.arp, 'above the mark')];
    }
    case 'check': {
      const values = derivation.checks.find(({ check }) => check.name === name);
      return values && values.verdict !== 'undecided' ? [values.verdict] : [];
    }
    default:
      return [];
  }
}

function markSummary(values: MarkValues | undefined): string[] {
  if (!values) return [];
  const { mark, east, north, latitude, longitude, orthometricHeight, ellipsoidalHeight } = values;
  const position =
    !isHole(east) && !isHole(north)
      ? [`${showNumber(east.value, 3)} m E, ${showNumber(north.value, 3)} m N`]
      : !isHole(latitude) && !isHole(longitude)
        ? [`${showAngle(latitude.value, 'N')}, ${showAngle(longitude.value, 'E')}`]
        : [];
  return [
    ...told(mark.description),
    ...position,
    ...length('', orthometricHeight, 'orthometric'),
    ...length('', ellipsoidalHeight, 'ellipsoidal'),
  ];
}

const told = (text: string | null | undefined) => (text ? [text] : []);

function length(before: string, value: Maybe<Value> | null | undefined, behind = ''): string[] {
  if (!value || isHole(value)) return [];
  const amount = `${showNumber(value.value, 3)} m`;
  return [[before, amount, behind].filter(Boolean).join(' ')];
}
