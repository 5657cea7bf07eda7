/** Which findings speak of what a receiver should be told: of the lines that those numbers are worked out from. */
import { isOfOtherTime } from '../../derive/setups/antenna-height.ts';
import type { SetupValues } from '../../derive/setups/setup.ts';
import { keptWith } from '../../../grammar/kept-with.ts';
import type { Entry, Line, Place } from '../../../grammar/tree.ts';
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
  const { near, below } = nearTo(setup, findings, subject);
  return {
    mark: near.filter(
      (finding) =>
        placesOf(finding).some((place) => touches(place, setup, OF_THE_MARK)) ||
        isElsewhere(finding.place, setup),
    ),
    antenna: near.filter(
      (finding) =>
        placesOf(finding).some((place) => touches(place, setup, OF_THE_ANTENNA)) ||
        (below.has(finding) && tookAway(finding)),
    ),
  };
}

/** What is wrong with a used file is told where the session asks for it, and is about the lines there. */
const placesOf = ({ code, place, related }: Finding): Place[] => [
  place,
  ...related.flatMap((one) => (one.code === code && one.place.path !== place.path ? [one.place] : [])),
];

/** Findings by what they stand in, so that each setup looks at its own and not at those of all others. */
interface Sorted {
  /** By word and name, as `mark/PM-14`; those of a job by its word alone. */
  readonly byThing: ReadonlyMap<string, readonly Finding[]>;
  /** Of words that nobody knows there, by the entry of the setup above. */
  readonly belowSetup: ReadonlyMap<Entry, readonly Finding[]>;
  readonly order: ReadonlyMap<Finding, number>;
}
const sortedBefore = keptWith<readonly Finding[], Sorted>();

function nearTo({ setup }: SetupValues, findings: readonly Finding[], subject: Subject) {
  const sorted = sortedBefore.get(findings) ?? sortedBy(findings, subject);
  sortedBefore.set(findings, sorted);
  const { byThing, belowSetup, order } = sorted;
  const things = [
    'job',
    `setup/${setup.name}`,
    `mark/${setup.on?.name ?? ''}`,
    `antenna/${setup.with?.name ?? ''}`,
  ];
  const below = new Set(belowSetup.get(setup.place.entry));
  const near = new Set([...things.flatMap((thing) => byThing.get(thing) ?? []), ...below]);
  const place = (finding: Finding) => order.get(finding) ?? 0;
  return { near: [...near].sort((one, other) => place(one) - place(other)), below };
}

function sortedBy(findings: readonly Finding[], { session }: Subject): Sorted {
  const byThing = new Map<string, Finding[]>();
  const belowSetup = new Map<Entry, Finding[]>();
  const setupAbove = setupsAbove(session.document.entries);
  for (const finding of findings) {
    const { entry } = finding.place;
    for (const thing of new Set(placesOf(finding).map(thingAt))) put(byThing, thing, finding);
    const above = LINES_GONE.has(finding.code) ? setupAbove.get(entry) : undefined;
    if (above) put(belowSetup, above, finding);
  }
  return { byThing, belowSetup, order: new Map(findings.map((finding, index) => [finding, index])) };
}

function thingAt({ entry }: Place): string {
  const [kind = ''] = meant(entry.header, 'entry');
  return kind === 'job' ? kind : `${kind}/${nameOf(entry)}`;
}

function put<Key>(lists: Map<Key, Finding[]>, key: Key, finding: Finding): void {
  const list = lists.get(key);
  if (list) list.push(finding);
  else lists.set(key, [finding]);
}

/** For each entry the last one above it that opens a setup. */
function setupsAbove(entries: readonly Entry[]): ReadonlyMap<Entry, Entry> {
  const above = new Map<Entry, Entry>();
  let latest: Entry | null = null;
  for (const entry of entries) {
    if (latest) above.set(entry, latest);
    if (meant(entry.header, 'entry').includes('setup')) latest = entry;
  }
  return above;
}

const LINES_GONE: ReadonlySet<string> = new Set(['syntax/misplaced-detail', 'syntax/unknown-word']);

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
  return line ? saysOneOf(line, details) && !isAnotherReading(line, entry, values) : true;
}

/** A reading of another time than that of the height that is told. */
function isAnotherReading(
  { start, end }: Line,
  entry: Entry,
  { height: { readings, groups }, tell }: SetupValues,
): boolean {
  const reading = readings.find(
    ({ measured: { place } }) => place.entry === entry && start <= place.start && place.start < end,
  );
  const told =
    groups.find(({ arp, phaseCentre }) => [arp, phaseCentre].includes(tell.antennaHeight)) ?? groups[0];
  return reading !== undefined && told !== undefined && isOfOtherTime(reading, told);
}

/** Before anything is keyed the receiver's own position speaks of the mark alone. */
const isElsewhere = (place: Place, { setup, keyed }: SetupValues): boolean =>
  keyed.every(({ state }) => state.position === null && state.height === null) &&
  place === setup.autonomous?.position?.place;

/** A line below the setup that another entry took from it, or that opens an entry that there is not. */
function tookAway({ place }: Finding): boolean {
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
