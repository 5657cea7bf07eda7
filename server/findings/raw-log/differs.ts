/** A raw observation file whose header says another antenna height, antenna type or place than the notes. */
import { loggedSetups } from '../capture/recorded.ts';
import type { Place } from '../../../grammar/tree.ts';
import type { SetupValues } from '../../derive/setups/setup.ts';
import { antennaType } from '../../evidence/antex.ts';
import { geodeticOf } from '../../geodesy/geocentric.ts';
import { topocentricBetween } from '../../geodesy/topocentric.ts';
import { metres } from '../../quantities/brands.ts';
import { showLength } from '../../quantities/show.ts';
import { isHole } from '../../quantities/value.ts';
import { WGS84 } from '../../geodesy/ellipsoid.ts';
import { kind, type Severity } from '../finding.ts';
import { short } from '../words.ts';

interface OtherHeader {
  readonly place: Place;
  readonly severity: Severity;
  readonly headline: string;
  readonly effect: string;
  readonly action: string;
}

export const rawLogDiffers = kind<OtherHeader>({
  code: 'raw-log/differs',
  find: (subject) => loggedSetups(subject).flatMap(differences),
  tell: ({ severity, headline, effect, action }) => ({ severity, headline, effect, action }),
});

/** Heights agree to half a centimetre, or to what the tape is good for; places to what a receiver finds on its own. */
const SAME_HEIGHT = 0.005;
const SAME_PLACE = { horizontal: 15, up: 25 };

function differences(setup: SetupValues): OtherHeader[] {
  const { rawLog } = setup;
  const header = rawLog?.header;
  if (!rawLog || !header) return [];
  const { place, text } = rawLog.file;
  const { name } = setup.setup;
  const told = (severity: Severity, headline: string, effect: string, action: string): OtherHeader => ({
    place,
    severity,
    headline,
    effect,
    action,
  });
  return [...heightOf(), ...typeOf(), ...placeOf()];

  function heightOf(): OtherHeader[] {
    const { arp } = setup.height;
    if (!header?.antennaDelta || isHole(arp)) return [];
    const written = header.antennaDelta.height;
    if (Math.abs(written - arp.value) <= Math.max(SAME_HEIGHT, 3 * (arp.sigma ?? 0))) return [];
    if (written === 0)
      return [
        told(
          'information',
          `No antenna height in the header of ${text}.`,
          `It is 0; by the tape the ARP of ${name} is ${showLength(arp.value)} above the mark.`,
          'Put it in before the file is processed.',
        ),
      ];
    return [
      told(
        'warning',
        `Antenna height in the raw log is ${showLength(Math.abs(written - arp.value))} too ${written > arp.value ? 'high' : 'low'}.`,
        `The header of ${text} has ${showLength(written)}; the tape at ${name} gives ${showLength(arp.value)}.`,
        'Correct one before the file is processed.',
      ),
    ];
  }

  function typeOf(): OtherHeader[] {
    const type = setup.antenna?.calibration?.type?.text;
    const written = header?.antenna?.type ?? '';
    if (!type || written.trim() === '' || antennaType(written) === antennaType(type)) return [];
    return [
      told(
        'warning',
        `Antenna ${short(written)} in the raw log, not ${short(type.trim())}.`,
        `The header of ${text} differs from the notes of ${name}: heights are off by the difference of the phase centres.`,
        'Look up which antenna was on the tripod.',
      ),
    ];
  }

  function placeOf(): OtherHeader[] {
    const { arp } = setup;
    if (!header?.approximatePosition || isHole(arp)) return [];
    const truth = { x: metres(arp.x.value), y: metres(arp.y.value), z: metres(arp.z.value) };
    const origin = geodeticOf(WGS84, truth);
    const { east, north, up } = topocentricBetween(origin, truth, header.approximatePosition);
    const horizontal = Math.hypot(east, north);
    if (horizontal <= SAME_PLACE.horizontal && Math.abs(up) <= SAME_PLACE.up) return [];
    return [
      told(
        'warning',
        `Raw log was recorded ${showLength(horizontal)} from ${name}.`,
        `The header of ${text} puts it ${showLength(Math.abs(up))} ${up > 0 ? 'above' : 'below'} as well. It may be another setup’s file.`,
        'Name the file of this setup.',
      ),
    ];
  }
}
