/** What findings about keyed numbers share: which difference they tell, what follows from it, and what to do. */
import { showLength } from '../../quantities/show.ts';
import { isHole } from '../../quantities/value.ts';
import { keyedDifferences, type KeyedDifference } from '../../slips/keyed-differences.ts';
import { numberOf } from '../../slips/situation.ts';
import { addedDetail } from '../edits.ts';
import { kind, type AnyFindingKind, type Fix, type Subject, type Told } from '../finding.ts';
import { impossibleUnder } from '../height/impossible.ts';
import { joined } from '../saying.ts';
import { unreadDetail } from '../unread.ts';
import { hasMoreToSay, slipLabel } from './slip-labels.ts';

/** The kind that tells those differences whose slip names this code; `null` of them have no slip. */
export function keyedKind(code: string, alsoUnnamed = false): AnyFindingKind {
  return kind({
    code,
    find: (subject) =>
      keyedDifferences(subject.session, subject.derivation).filter(
        ({ named }) => named?.slip.code === code || (alsoUnnamed && !named),
      ),
    tell: tellDifference,
    mend: lineForLater,
  });
}

export function tellDifference(difference: KeyedDifference, subject: Subject): Told {
  const { setup, named, states, until, from, by } = difference;
  const { name } = setup.setup;
  const key = (direction: 'up' | 'horizontal') =>
    states.map((state) => `keyed/${name}/${state}/${direction}`);
  const own = 'up' in by ? 'up' : 'horizontal';
  // One slip that gives position and height is told at the position, and the height follows.
  const together = named && named.fields.length > 1;
  const leads = !together || difference.field === named.fields[0];
  return {
    severity: 'error',
    headline: headlineOf(difference),
    effect: joined(numbersOf(difference), slipOf(difference), partOfTransformation(difference)),
    action: joined(
      advice(difference, subject),
      difference.rounded ? 'If only the note is rounded, write what was keyed in full.' : '',
    ),
    causes: together ? [...key('horizontal'), ...key('up')] : key(own),
    follows: [
      // What was broadcast is told by a recording, and the note of what was keyed is then the lesser matter.
      ...states.map((state) => contradicted(name, state)),
      ...unreadHeights(difference),
      ...(own === 'up' ? impossibleUnder(setup) : []),
      ...(leads ? [] : key('horizontal')),
      ...(difference.field === 'antennaHeight' && asSomeReading(difference)
        ? [`reading-unit/${name}`, `reading/${name}`]
        : []),
      ...(setup.mark ? [`mark/${setup.mark.mark.name}/${own === 'up' ? 'height' : 'position'}`] : []),
    ],
    ...(until === null ? {} : { past: { from, until } }),
  };
}

/** What a recording shows to be another thing than was noted as keyed. */
export const contradicted = (setup: string, state: number) => `contradicted/${setup}/${state}`;

/**
 * Lines of the antenna's height that cannot be read change what should have been keyed; a further reading does not, where
 * one of that time can be read.
 */
function unreadHeights({ setup, field, atAntenna, from }: KeyedDifference): string[] {
  if (field !== 'antennaHeight' && !atAntenna) return [];
  const taped = setup.height.groups[0]?.readings ?? [];
  const isOfThen = ({ instant }: (typeof taped)[number]) =>
    instant === null || from === null || instant - from <= TIME_TO_TAPE;
  const words = taped.some(isOfThen) ? ['extension'] : ['extension', 'measured'];
  return words.map((word) => unreadDetail(setup.setup.name, word));
}
/** How long after the keying a tape may be read and still tell what stood then, seconds. */
const TIME_TO_TAPE = 1800;

/** What was keyed agrees with one of several readings: that the mean does not is the other reading's doing. */
function asSomeReading({ setup, keyed }: KeyedDifference): boolean {
  const readings = setup.height.groups[0]?.readings ?? [];
  return (
    keyed !== null &&
    readings.length > 1 &&
    readings.some(({ arp }) => !isHole(arp) && Math.abs(arp.value - keyed) <= ONE_READING)
  );
}
/** A single reading, to the 99 % of the usual tape, metres. */
const ONE_READING = 0.003;

function headlineOf({ field, by, setup, named }: KeyedDifference): string {
  const label = named ? slipLabel(named.slip.name) : '';
  const because = label === '' ? '' : `: ${label}`;
  if (!('up' in by))
    return `Position keyed ${showLength(Math.hypot(by.east, by.north))} from ${setup.mark?.mark.name ?? 'the mark'}${because}.`;
  const what = field === 'antennaHeight' ? 'Antenna height' : 'Ellipsoidal height';
  return `${what} keyed ${saidUp(by.up)}${because}.`;
}

const saidUp = (up: number) => `${showLength(Math.abs(up))} too ${up > 0 ? 'high' : 'low'}`;

/** What was keyed beside what is right. */
function numbersOf({ field, keyed, right, by, setup, atAntenna }: KeyedDifference): string {
  const mark = setup.mark?.mark.name ?? 'the mark';
  if (!('up' in by)) return `It is ${sides(by)} of ${mark}.`;
  if (keyed === null || right === null) return '';
  if (field === 'antennaHeight') return `Keyed ${metres(keyed)}; the tape gives ${metres(right)}.`;
  return `Keyed ${metres(keyed)}; ${atAntenna ? 'the antenna is at' : `${mark} has`} ${metres(right)}.`;
}

/** Where the headline does not say the slip whole. */
const slipOf = ({ named, by }: KeyedDifference) =>
  named && hasMoreToSay(named.slip.name, 'up' in by) ? `Likely: ${named.says}.` : '';

const metres = (value: number) => `${value.toFixed(3).replace('-', '\u2212')} m`;
function sides({ east, north }: { readonly east: number; readonly north: number }): string {
  const side = (value: number, positive: string, negative: string) =>
    Math.abs(value) < 0.001 * Math.hypot(east, north)
      ? []
      : [`${showLength(Math.abs(value))} ${value < 0 ? negative : positive}`];
  return [...side(east, 'east', 'west'), ...side(north, 'north', 'south')].join(' and ');
}

/** The size of the slip is known no better than the transformation. */
const partOfTransformation = ({ transformation }: KeyedDifference) =>
  transformation === 0
    ? ''
    : `Up to ${showLength(transformation)} of it can be the transformation from the mark’s datum.`;

/** The points of the base are off by what the headline says, so that it is not said again. */
function advice(difference: KeyedDifference, subject: Subject): string {
  const { until, setup } = difference;
  const { session } = subject;
  const points = `points from ${setup.setup.name}`;
  if (checksDisagree(difference, subject))
    return `But checks of that time pass: look at the receiver or its log before you shift ${points}.`;
  if (until !== null) return `Shift the ${points} of that time.`;
  const open = setup.setup.until === null;
  return open && session.reviews.length === 0
    ? `Key ${rightNumber(difference)}, note the time, then repair earlier ${points}.`
    : `Shift the ${points}, or note what was keyed later.`;
}

/** A height by the coarse model is for finding blunders, and nobody is to key it. */
function rightNumber({ field, right, setup }: KeyedDifference): string {
  if (field === 'position') return 'the right position';
  if (right === null || (field === 'height' && setup.tell.coarse)) return 'the right height';
  return metres(right);
}

/** Checks of that time pass, though what was keyed would have made them fail. */
function checksDisagree({ setup, states, by }: KeyedDifference, { derivation }: Subject): boolean {
  const direction = 'up' in by ? 'up' : 'horizontal';
  const size = 'up' in by ? Math.abs(by.up) : Math.hypot(by.east, by.north);
  return derivation.checks.some((check) => {
    if (check.setup !== setup || !check.keyed || !states.includes(check.keyed.state.number)) return false;
    if (check.verdict !== 'passes' || check.mark === setup.mark) return false;
    const limit = numberOf(check.tolerance[direction]) ?? numberOf(check.expected[direction]);
    return limit !== null && size > 2 * limit;
  });
}

/**
 * Nobody but the surveyor knows what was keyed afterwards and when: the line has open values only. Where it is noted, or a
 * correction says what was made of it, nothing is to be added.
 */
export function lineForLater(
  { field, place, named, until, setup }: KeyedDifference,
  { session }: Subject,
): readonly Fix[] {
  const isCorrected = session.corrections.some(({ on }) =>
    on ? on.name === setup.setup.name : session.setups.size === 1,
  );
  if (until !== null || isCorrected) return [];
  const open = {
    antennaHeight: 'antenna-height ?',
    height: 'height ?',
    position: 'position ?',
  };
  // What one slip spoilt together is keyed anew together.
  const together = field === 'antennaHeight' ? [] : (named?.fields ?? []);
  const fields = (['position', 'height', 'antennaHeight'] as const).filter(
    (one) => one === field || (one !== 'antennaHeight' && together.includes(one)),
  );
  const value = [...fields.map((one) => open[one]), 'at ?'].join(', ');
  return [
    {
      title: 'Add a line for what was keyed instead',
      edits: [addedDetail(place.path, place.entry, 'keyed', value)],
    },
  ];
}
