/** Places outside the area that a named transformation is published for. */
import type { Place } from '../../../grammar/tree.ts';
import { distanceOutside, isWithin } from '../../geodesy/area.ts';
import { transformationOf, type DatumTransformation } from '../../geodesy/datums/transformation.ts';
import { latitude, longitude } from '../../quantities/brands.ts';
import { isRefusal } from '../../quantities/refusal.ts';
import { showLength } from '../../quantities/show.ts';
import { isHole, type Maybe } from '../../quantities/value.ts';
import { locate, type Located } from '../../derive/positions/locate.ts';
import type { Frame } from '../../derive/positions/frame.ts';
import type { SetupValues } from '../../derive/setups/setup.ts';
import type { Named } from '../../session/coordinates.ts';
import { foundInEach, valuesOf } from '../../session/each.ts';
import type { Subject, Told } from '../finding.ts';
import { BESIDE } from './marks-out-of-area.ts';
import { foundInWritten } from './written.ts';

export interface OutsideTransformation {
  readonly place: Place;
  readonly who: string;
  readonly transformation: DatumTransformation;
  /** Metres from the area; 0 in a part of it that the transformation leaves out. */
  readonly distance: number;
}

export function outsideTransformation(subject: Subject): OutsideTransformation[] {
  // The job's own is one cause, however many bases stand outside.
  const [first] = ofBases(valuesOf(subject.derivation.setups), subject.derivation.frame);
  return [...ofWritten(subject), ...(first ? [first] : [])];
}

const ofWritten = foundInWritten(({ position, systems, says }) =>
  position.by ? outside(position.by, locate(position, systems, says, null), says) : [],
);

const ofBases = foundInEach(({ mark }: SetupValues, { keyedBy }: Frame) =>
  mark && keyedBy ? outside(keyedBy, mark.located, mark.mark.name) : [],
);

function outside(named: Named, located: Maybe<Located>, who: string): OutsideTransformation[] {
  const transformation = transformationOf(named.name);
  if (isRefusal(transformation) || isHole(located)) return [];
  const at = { latitude: latitude(located.latitude.value), longitude: longitude(located.longitude.value) };
  const distance = distanceOutside(transformation.area, at);
  const leftOut = transformation.leavesOut !== undefined && isWithin(transformation.leavesOut, at);
  return distance > BESIDE || leftOut ? [{ place: named.place, who, transformation, distance }] : [];
}

export function tellOutsideTransformation({ who, transformation, distance }: OutsideTransformation): Told {
  const { code, name, area } = transformation;
  const said = `${code ?? name}${code ? ` (${name})` : ''}`;
  const of = area.name.replace(/[.]$/, '');
  return {
    severity: distance > 0 ? 'error' : 'warning',
    headline:
      distance > 0
        ? `${who} lies ${showLength(distance)} outside the area of ${said}.`
        : `${who} may lie in a part that ${said} leaves out.`,
    effect: `It is published for ${of}; elsewhere its numbers look right and can be metres off.`,
    action: 'Name a transformation that is published for the place (by).',
  };
}
