/**
 * Gives how far off centre the tape was held in the stead of a correction worked out by hand, where another reading to
 * the same point says it, and the slope that it makes is that very correction to the last digit typed.
 */
import { unitNamed } from '../../../grammar/units.ts';
import type { Term } from '../../../grammar/tree.ts';
import { isHole } from '../../quantities/value.ts';
import type { Measured, Setup } from '../../session/entries.ts';
import type { Inspection } from '../../inspect.ts';
import type { Proposal } from './refactorings.ts';

export const offCentre: Proposal = ({ bound, line, item, entry, start }, { session }) => {
  if (bound.kind !== 'setup' || item?.kind !== 'sum') return [];
  const index = bound.measured.findIndex(({ place }) => place.start === line?.start);
  const measured = bound.measured[index];
  const [reading, correction, ...more] = item.terms;
  if (!measured?.to || measured.offCentre || measured.manner || !reading || !correction || more.length > 0)
    return [];
  const distance = distanceSaid(bound, measured);
  const half = halfOfLastDigit(correction);
  if (correction.sign !== -1 || distance === null || half === null) return [];
  const { path } = session.document;
  const behind = start + measured.to.place.end;
  const arp = (of: Inspection) => of.derivation.setups.get(bound.name)?.height.readings[index]?.arp;
  return [
    {
      kind: 'rewrite',
      title: `Give ${distance} off centre instead of the correction ${entry.text.slice(correction.start, correction.end)}`,
      edits: [
        { at: { path, start: start + reading.end, end: start + correction.end }, text: '' },
        { at: { path, start: behind, end: behind }, text: `, ${distance} off centre` },
      ],
      // Worked out, the slope has digits that the hand left out; no more may differ than it rounded.
      keeps: (before, after) => {
        const then = arp(before);
        const now = arp(after);
        if (!then || !now || isHole(then) || isHole(now)) return false;
        return Math.abs(then.value - now.value) <= half;
      },
    },
  ];
};

/** As another reading to the same point has it; null where none does, or where they differ. */
function distanceSaid(setup: Setup, { to }: Measured): string | null {
  const said = setup.measured.flatMap((other) => {
    const { offCentre: distance } = other;
    if (other.to?.name !== to?.name || !distance || isHole(distance) || distance.origin !== 'given')
      return [];
    return [distance];
  });
  const [first] = said;
  return first && said.every(({ value }) => value === first.value) ? first.typed : null;
}

/** In metres. */
function halfOfLastDigit({ measure }: Term): number | null {
  const [part, ...more] = measure?.parts ?? [];
  const factor = part?.unit && unitNamed(part.unit.unit)?.factor;
  if (!part || !factor || more.length > 0) return null;
  const decimals = part.numeral.typed.split('.')[1]?.length ?? 0;
  return (factor * 10 ** -decimals) / 2;
}
