/** Every position that a session writes down: what it is, and which systems it is read in. */
import { keyedSystems } from '../../derive/setups/keyed.ts';
import type { Frame } from '../../derive/positions/frame.ts';
import type { OwnSystems } from '../../derive/positions/locate.ts';
import { remembered } from '../../derive/remembered.ts';
import type { Position } from '../../session/coordinates.ts';
import type { Check, Mark, Point, Setup } from '../../session/entries.ts';
import { foundInEach, valuesOf } from '../../session/each.ts';
import type { Subject } from '../finding.ts';

export interface Written {
  readonly role: 'mark' | 'keyed' | 'autonomous' | 'observed' | 'point';
  /** `PM-14`, `What was keyed at BASE`. */
  readonly says: string;
  readonly position: Position;
  readonly systems: OwnSystems;
  /** Of its mark, setup, check or point. */
  readonly name: string;
}

type Owner = Mark | Setup | Check | Point;

/** What is found in each of them; an edit looks only at the entries that it changes. */
export function foundInWritten<Found extends object>(
  look: (written: Written, frame: Frame) => readonly Found[],
): (subject: Subject) => readonly Found[] {
  const inEach = foundInEach((owner: Owner, frame: Frame) =>
    writtenIn(owner, frame).flatMap((written) => look(written, frame)),
  );
  return ({ session, derivation: { frame } }) => [
    ...inEach(valuesOf(session.marks), frame),
    ...inEach(valuesOf(session.setups), frame),
    ...inEach(session.checks, frame),
    ...inEach(session.singlePoints, frame),
  ];
}

const writtenIn = remembered((owner: Owner, frame: Frame): readonly Written[] => {
  const { name } = owner;
  const one = (
    role: Written['role'],
    says: string,
    position: Position | null | undefined,
    systems: OwnSystems = frame,
  ): Written[] => (position ? [{ role, says, position, systems, name }] : []);
  if (owner.kind === 'mark') return one('mark', name, owner.position);
  if (owner.kind === 'check') return one('observed', `What ${name} observed`, owner.observed?.position);
  if (owner.kind === 'point') return one('point', name, owner.observed?.position);
  return [
    ...one('autonomous', `The autonomous position of ${name}`, owner.autonomous?.position),
    ...owner.keyed.flatMap(({ position }) =>
      one('keyed', `The position keyed at ${name}`, position, keyedSystems(frame)),
    ),
  ];
});
