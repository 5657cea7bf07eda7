/** Which findings speak of what a receiver should be told: of the lines that those numbers are worked out from. */
import { isOfOtherTime } from '../../derive/setups/antenna-height.ts';
import type { SetupValues } from '../../derive/setups/setup.ts';
import type { Line, Place } from '../../../grammar/tree.ts';
import type { Finding, Subject } from '../finding.ts';
import { lineAt, meant, nameOf } from '../unread.ts';

export interface BearingFindings {
  /** On position and height of the mark. */
  readonly mark: readonly Finding[];
  /** On the height of the antenna above it. */
  readonly antenna: readonly Finding[];
}

/** By entry, the details that position and height are worked out from, and those that the antenna's height is. */
const OF_THE_MARK: Readonly<Record<string, readonly string[]>> = {
  job: ['grid', 'datum', 'vertical', 'geoid'],
  mark: ['position', 'height', 'separation', 'epoch', 'found'],
};
const OF_THE_ANTENNA: Readonly<Record<string, readonly string[]>> = {
  setup: ['measured', 'extension', 'temperature'],
  antenna: ['tape-point', 'hook', 'fixed-height', 'phase-centre'],
};

export function bearingOn(
  setup: SetupValues,
  findings: readonly Finding[],
  subject: Subject,
): BearingFindings {
  return {
    mark: findings.filter(({ place }) => touches(place, setup, OF_THE_MARK) || isElsewhere(place, setup)),
    antenna: findings.filter(
      (finding) => touches(finding.place, setup, OF_THE_ANTENNA) || tookAway(finding, setup, subject),
    ),
  };
}

/** In a line of the setup, its mark, its antenna or the job that is one of these, may be meant for one, or names the entry. */
function touches(
  { path, entry, start }: Place,
  values: SetupValues,
  words: Readonly<Record<string, readonly string[]>>,
): boolean {
  const { setup, mark } = values;
  const [kind = ''] = meant(entry.header, 'entry');
  const details = words[kind];
  if (!details) return false;
  const names: Readonly<Record<string, string | undefined>> = {
    setup: setup.name,
    mark: setup.on?.name,
    antenna: setup.with?.name,
  };
  const concerned =
    kind === 'job'
      ? path === setup.place.path || path === mark?.mark.place.path
      : nameOf(entry) === names[kind];
  if (!concerned) return false;
  const line = lineAt(entry.details, start);
  return line ? saysOneOf(line, details) && !isAnotherReading(line, values) : true;
}

/** A reading of another time than that of the height that is told. */
function isAnotherReading(
  { start, end }: Line,
  { height: { readings, groups }, tell }: SetupValues,
): boolean {
  const reading = readings.find(({ measured: { place } }) => start <= place.start && place.start < end);
  const told =
    groups.find(({ arp, phaseCentre }) => [arp, phaseCentre].includes(tell.antennaHeight)) ?? groups[0];
  return reading !== undefined && told !== undefined && isOfOtherTime(reading, told);
}

/** Before anything is keyed the receiver's own position speaks of the mark alone. */
const isElsewhere = (place: Place, { setup, keyed }: SetupValues): boolean =>
  keyed.every(({ state }) => state.position === null && state.height === null) &&
  place === setup.autonomous?.position?.place;

/** A line below the setup that another entry took from it, or that opens an entry that there is not. */
function tookAway({ code, place }: Finding, { setup }: SetupValues, { session }: Subject): boolean {
  if (code !== 'syntax/misplaced-detail' && code !== 'syntax/unknown-word') return false;
  const { entries } = session.document;
  const above = entries.slice(0, Math.max(0, entries.indexOf(place.entry)));
  if (above.findLast(({ header }) => meant(header, 'entry').includes('setup')) !== setup.place.entry)
    return false;
  const words = OF_THE_ANTENNA['setup'] ?? [];
  return [place.entry.header, ...place.entry.details].some(
    (line) => line.word !== null && saysOneOf(line, words) && meant(line, 'detail').length > 0,
  );
}

/** A line whose word nobody knows may say anything. */
function saysOneOf(line: Line, words: readonly string[]): boolean {
  const possible = meant(line, 'detail');
  return possible.length === 0 || possible.some((word) => words.includes(word));
}
