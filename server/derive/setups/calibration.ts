/** An antenna's phase centre from a calibration file, for the signal or combination that is measured. */
import { antexReader, isValidAt, type AntexFacts, type CalibratedAntenna } from '../../evidence/antex.ts';
import { compute } from '../../quantities/computed.ts';
import { isRefusal, type Refusal } from '../../quantities/refusal.ts';
import { given, hole, isHole, type Maybe, type Value } from '../../quantities/value.ts';
import type { Antenna, AntennaCalibration } from '../../session/entries.ts';

export interface CalibratedValues {
  /** Up from the ARP to the mean phase centre. */
  readonly phaseCentre: Maybe<Value>;
  readonly kind: 'absolute' | 'relative' | null;
  /** Types of the file that were perhaps meant, where the one named is not in it. */
  readonly nearTypes: readonly string[];
}

/** GPS carrier frequencies in MHz (IS-GPS-200). */
const L1 = 1575.42;
const L2 = 1227.6;

/** @param day seconds since 1970, to choose a calibration that was valid then; null where the day is not known */
export function calibrated(
  antenna: Antenna,
  calibration: AntennaCalibration,
  bytes: Uint8Array | Refusal,
  day: number | null,
): CalibratedValues {
  const none = (because: string): CalibratedValues => ({
    phaseCentre: hole(because, calibration.place),
    kind: null,
    nearTypes: [],
  });
  if (isRefusal(bytes))
    return none(`the calibration file ${calibration.file.text} cannot be read: ${bytes.refused}`);
  if (!calibration.type)
    return none(`the type of antenna ${antenna.name} in ${calibration.file.text} is not said`);
  const facts = factsOf(bytes, calibration.type.text);
  const kind = facts.calibration ?? null;
  const found = chosen(facts, antenna, day);
  if (!found) {
    const because =
      facts.found.length > 0 ? 'has no calibration that was valid on the day' : 'is not in the file';
    return {
      ...none(`${calibration.type.text.trim()} ${because} (${calibration.file.text})`),
      kind,
      nearTypes: facts.nearTypes,
    };
  }
  return { phaseCentre: phaseCentreOf(found, antenna, calibration), kind, nearTypes: [] };
}

/** The antenna's own calibration where its serial number has one, else that of its type. */
function chosen(facts: AntexFacts, antenna: Antenna, day: number | null): CalibratedAntenna | undefined {
  const valid = facts.found.filter((found) => day === null || isValidAt(found, day));
  const own = antenna.serial
    ? valid.find((found) => found.serial !== '' && found.serial === antenna.serial?.name)
    : undefined;
  return own ?? valid.find((found) => found.serial === '');
}

function phaseCentreOf(
  found: CalibratedAntenna,
  antenna: Antenna,
  calibration: AntennaCalibration,
): Maybe<Value> {
  const wanted = calibration.combination?.name ?? 'L1';
  if (wanted !== 'ionosphere-free')
    return offsetOf(found, wanted === 'L2' ? 'G02' : 'G01', antenna, calibration);
  const o1 = offsetOf(found, 'G01', antenna, calibration);
  const o2 = offsetOf(found, 'G02', antenna, calibration);
  if (isHole(o1)) return o1;
  if (isHole(o2)) return o2;
  const formula = {
    symbol: 'o',
    expression: `(${L1}² · o1 − ${L2}² · o2) / (${L1}² − ${L2}²)`,
    evaluable: true,
    source: 'ionosphere-free combination of L1 and L2 (IS-GPS-200, 20.3.3.3.3.3)',
  };
  return compute(
    `phase centre of ${antenna.name}, ionosphere-free`,
    'm',
    formula,
    { o1, o2 },
    (v) => (L1 ** 2 * v.o1 - L2 ** 2 * v.o2) / (L1 ** 2 - L2 ** 2),
  );
}

function offsetOf(
  found: CalibratedAntenna,
  frequency: string,
  antenna: Antenna,
  calibration: AntennaCalibration,
): Maybe<Value> {
  const offset = found.offsets.find((candidate) => candidate.frequency === frequency);
  if (!offset)
    return hole(
      `${found.type.trim()} is not calibrated for ${frequency} in ${calibration.file.text}`,
      calibration.place,
    );
  const typed = `${(offset.up * 1000).toFixed(2)} mm up for ${frequency} in ${calibration.file.text}${calibration.combination ? '' : ', L1 being assumed'}`;
  return given(`phase centre of ${antenna.name}, ${frequency}`, offset.up, 'm', 0, typed, calibration.place);
}

/** A file is searched once for each type that is asked for. */
function factsOf(bytes: Uint8Array, type: string): AntexFacts {
  const known = searched.get(bytes) ?? new Map<string, AntexFacts>();
  searched.set(bytes, known);
  const before = known.get(type);
  if (before) return before;
  const reader = antexReader(type);
  reader.push(bytes);
  const facts = reader.finish();
  known.set(type, facts);
  return facts;
}
const searched = new WeakMap<Uint8Array, Map<string, AntexFacts>>();
