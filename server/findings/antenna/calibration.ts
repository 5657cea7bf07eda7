/** An antenna calibration that cannot be used: no such file, no such type in it, or two kinds mixed in one session. */
import type { Place } from '../../../grammar/tree.ts';
import { isHole } from '../../quantities/value.ts';
import { kind, readingFixes, type Subject } from '../finding.ts';
import { oneOf, sentence } from '../words.ts';

interface Evidence {
  readonly place: Place;
  readonly headline: string;
  readonly effect: string;
  readonly action: string;
  readonly nearTypes: readonly string[];
}

export const antennaCalibration = kind<Evidence>({
  code: 'antenna/calibration',
  find: (subject) => [...unusable(subject), ...mixed(subject)],
  tell: ({ headline, effect, action }) => ({ severity: 'warning', headline, effect, action }),
  mend: ({ place, nearTypes }) =>
    readingFixes(
      place,
      nearTypes.map((type) => `"${type}"`),
    ),
});

function unusable({ derivation }: Subject): Evidence[] {
  return [...derivation.antennas.values()].flatMap(({ antenna, calibration }) => {
    if (!calibration || !isHole(calibration.phaseCentre) || !antenna.calibration) return [];
    const near =
      calibration.nearTypes.length > 0
        ? `Did you mean ${oneOf(calibration.nearTypes.slice(0, 3))}?`
        : 'Correct the calibration line.';
    return [
      {
        place: (calibration.nearTypes.length > 0
          ? (antenna.calibration.type ?? antenna.calibration.file)
          : antenna.calibration.file
        ).place,
        headline: `Phase centre of antenna ${antenna.name} not known.`,
        effect: `${sentence(calibration.phaseCentre.hole)}. Only heights to the ARP are used.`,
        action: near,
        nearTypes: calibration.nearTypes.slice(0, 3),
      },
    ];
  });
}

/** Absolute and relative calibrations differ by centimetres and must never meet in one baseline. */
function mixed({ derivation }: Subject): Evidence[] {
  const used = [...derivation.antennas.values()].filter(({ calibration }) => calibration?.kind);
  const absolute = used.some(({ calibration }) => calibration?.kind === 'absolute');
  return used.flatMap(({ antenna, calibration }) => {
    if (!absolute || calibration?.kind !== 'relative' || !antenna.calibration) return [];
    return [
      {
        place: antenna.calibration.file.place,
        headline: `Antenna ${antenna.name} is calibrated relatively, another one absolutely.`,
        effect: 'The two kinds differ by centimetres in height.',
        action: 'Take both calibrations from one kind of file.',
        nearTypes: [],
      },
    ];
  });
}
