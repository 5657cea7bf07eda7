/** An antenna calibration that cannot be used: no such file, no such type in it, or two kinds mixed in one session. */
import type { Place } from '../../../grammar/tree.ts';
import { isHole } from '../../quantities/value.ts';
import { kind, readingFixes, type Subject } from '../finding.ts';

interface Evidence {
  readonly place: Place;
  readonly message: string;
  readonly nearTypes: readonly string[];
}

export const antennaCalibration = kind<Evidence>({
  code: 'antenna/calibration',
  find: (subject) => [...unusable(subject), ...mixed(subject)],
  tell: ({ message }) => ({ severity: 'warning', message }),
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
      calibration.nearTypes.length > 0 ? ` It has ${calibration.nearTypes.slice(0, 3).join(', ')}.` : '';
    return [
      {
        place: (calibration.nearTypes.length > 0
          ? (antenna.calibration.type ?? antenna.calibration.file)
          : antenna.calibration.file
        ).place,
        message: `The phase centre of antenna ${antenna.name} is not known: ${calibration.phaseCentre.hole}.${near} Heights to the ARP stand; those to the phase centre do not.`,
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
    const message = `Antenna ${antenna.name} has a relative calibration and another antenna of this session an absolute one. The two differ by centimetres in height; take both from one kind of file.`;
    return [{ place: antenna.calibration.file.place, message, nearTypes: [] }];
  });
}
