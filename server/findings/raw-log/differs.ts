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
  readonly message: string;
}

export const rawLogDiffers = kind<OtherHeader>({
  code: 'raw-log/differs',
  find: (subject) => loggedSetups(subject).flatMap(differences),
  tell: ({ severity, message }) => ({ severity, message }),
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
  const told = (severity: Severity, message: string): OtherHeader => ({ place, severity, message });
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
          `The header of ${text} gives no antenna height (0), and the ARP of ${name} stands ${showLength(arp.value)} above its mark. Whoever processes this file must put it in.`,
        ),
      ];
    return [
      told(
        'warning',
        `The header of ${text} puts the ARP ${showLength(written)} above the mark, and by the tape it stands ${showLength(arp.value)} above it at ${name}. Whoever processes this file is off by ${showLength(Math.abs(written - arp.value))} in height unless one of the two is put right.`,
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
        `The header of ${text} names the antenna ${short(written)}, and the notes name ${short(type.trim())} for ${name}. With the wrong calibration heights are off by what the phase centres differ.`,
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
        `The header of ${text} gives an approximate position ${showLength(horizontal)} from where ${name} stands, ${showLength(Math.abs(up))} ${up > 0 ? 'above' : 'below'} it. It may be the file of another setup.`,
      ),
    ];
  }
}
