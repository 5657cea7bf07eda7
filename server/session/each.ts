/** Lists of answers, one for each of a list of things: after an edit only the things that changed are asked about again. */
import { placed } from '../../grammar/fault.ts';
import { keptTogether, keptWith } from '../../grammar/kept-with.ts';
import type { Place } from '../../grammar/tree.ts';

interface Run {
  readonly things: readonly object[];
  readonly circumstances: readonly unknown[];
  readonly inputs: readonly (readonly unknown[])[];
  readonly answers: readonly unknown[];
}

/**
 * The answers to each thing, in order, from what it takes out of the circumstances. All are compared by identity with
 * those of the last lists, which is quicker than asking a memory about each; where no answer has changed, the same list
 * comes back.
 *
 * @param inputsOf what of the circumstances an answer rests on; looked for only where the circumstances have changed,
 *   and where only tables have changed, only for what has taken one of the values that were replaced in them
 */
export function answersFrom<
  Thing extends object,
  Circumstances extends readonly unknown[],
  Inputs extends readonly unknown[] | [],
  Answer,
>(
  inputsOf: (thing: Thing, ...circumstances: Circumstances) => Inputs,
  answer: (thing: Thing, ...inputs: Inputs) => Answer,
): (things: readonly Thing[], ...circumstances: Circumstances) => readonly Answer[] {
  const runs = runsByTheirEnds();
  const anew = (thing: Thing, inputs: readonly unknown[]) => {
    try {
      return answer(thing, ...(inputs as Inputs));
    } catch (error) {
      throw placed(error, placeOf(thing));
    }
  };
  return (things, ...circumstances) => {
    if (things.length === 0) return NONE;
    const before = runs.akinTo(things);
    const unchanged = before !== undefined && sameAll(before.circumstances, circumstances);
    if (unchanged && before.things === things) return before.answers as readonly Answer[];
    const inputs = (thing: Thing) => inputsOf(thing, ...circumstances);
    const places =
      before && touchedPlaces(before, things, unchanged ? [] : replacedIn(before, circumstances));
    const { own, answers } =
      places && before
        ? patchedRun(before, places, things, inputs, anew)
        : wholeRun(before, unchanged, things, inputs, anew);
    runs.replace(before, { things, circumstances, inputs: own, answers });
    return answers as readonly Answer[];
  };
}

/** Of a thing of the session, or of the one that values are about. */
function placeOf(thing: object): Place | null {
  const own = [thing, ...Object.values(thing)].find(
    (part): part is { readonly place: Place } =>
      typeof part === 'object' && part !== null && 'place' in part && Boolean(part.place),
  );
  return own?.place ?? null;
}

type Took = Pick<Run, 'answers'> & { readonly own: Run['inputs'] };

function patchedRun<Thing extends object>(
  before: Run,
  places: readonly number[],
  things: readonly Thing[],
  inputsOf: (thing: Thing) => readonly unknown[],
  answer: (thing: Thing, inputs: readonly unknown[]) => unknown,
): Took {
  const own = before.inputs.slice();
  let { answers } = before;
  for (const place of places) {
    const thing = things[place] as Thing;
    const inputs = inputsOf(thing);
    const known = before.things[place] === thing && sameAll(own[place] ?? NONE, inputs);
    if (known) continue;
    own[place] = inputs;
    const found = answer(thing, inputs);
    if (found !== answers[place]) answers = answers.with(place, found);
  }
  return { own, answers };
}

function wholeRun<Thing extends object>(
  before: Run | undefined,
  unchanged: boolean,
  things: readonly Thing[],
  inputsOf: (thing: Thing) => readonly unknown[],
  answer: (thing: Thing, inputs: readonly unknown[]) => unknown,
): Took {
  const shift = before ? things.length - before.things.length : 0;
  const behind = before ? sameAtTheEnd(before.things, things) : 0;
  const own: (readonly unknown[])[] = [];
  const answers: unknown[] = [];
  let changed = !before || shift !== 0;
  for (let index = 0; index < things.length; index += 1) {
    const thing = things[index] as Thing;
    // Where things were put in or taken out, those before and those behind are the same ones as before.
    const earlier = things.length - index <= behind ? index - shift : index;
    const known = before?.things[earlier] === thing ? before.inputs[earlier] : undefined;
    const inputs = known && unchanged ? known : inputsOf(thing);
    const found = known && sameAll(known, inputs) ? before?.answers[earlier] : answer(thing, inputs);
    changed ||= found !== before?.answers[earlier];
    own.push(inputs);
    answers.push(found);
  }
  return { own, answers: changed || !before ? answers : before.answers };
}

/** Where there is another thing, or one that took a value that is no longer; null where that cannot be told, or is much. */
function touchedPlaces(
  before: Run,
  things: readonly object[],
  replaced: readonly unknown[] | null,
): readonly number[] | null {
  const places = replaced && changedPlaces(before.things, things);
  if (!places || replaced.length === 0) return places;
  const touched = new Set(places);
  before.inputs.forEach((inputs, place) => {
    if (replaced.some((value) => inputs.includes(value))) touched.add(place);
  });
  return [...touched];
}

/** The values that tables no longer have; null where anything else has changed. */
function replacedIn(before: Run, circumstances: readonly unknown[]): readonly unknown[] | null {
  const replaced: unknown[] = [];
  for (const [index, now] of circumstances.entries()) {
    const other = before.circumstances[index];
    if (other === now) continue;
    const values = replacedBetween(other, now);
    if (!values) return null;
    for (const value of values) replaced.push(value);
  }
  return replaced;
}

/** Where two lists of one length differ, looked for once for all who ask; null where in many places. */
export function changedPlaces(before: readonly object[], now: readonly object[]): readonly number[] | null {
  if (before.length !== now.length) return null;
  const known = changes.get(now);
  if (known?.before.deref() === before) return known.places;
  let places: number[] | null = [];
  for (let index = 0; index < now.length && places; index += 1) {
    if (before[index] === now[index]) continue;
    places = places.length < FEW ? [...places, index] : null;
  }
  // Weakly, or each list would keep all those before it.
  changes.set(now, { before: new WeakRef(before), places });
  return places;
}
const FEW = 16;
const changes = keptWith<
  readonly object[],
  { readonly before: WeakRef<readonly object[]>; readonly places: readonly number[] | null }
>();

/** The answers to each thing under the same circumstances, which each of them rests on. */
export const answersToEach = <Thing extends object, Circumstances extends readonly unknown[], Answer>(
  answer: (thing: Thing, ...circumstances: Circumstances) => Answer,
) => answersFrom((_: Thing, ...circumstances: Circumstances) => circumstances, answer);

/** What is found in each thing, in one list; nothing in most, as a rule. */
export function foundInEach<Thing extends object, Circumstances extends readonly unknown[], Found>(
  find: (thing: Thing, ...circumstances: Circumstances) => readonly Found[],
): (things: readonly Thing[], ...circumstances: Circumstances) => readonly Found[] {
  const findings = answersToEach((thing: Thing, ...circumstances: Circumstances): readonly Found[] => {
    const found = find(thing, ...circumstances);
    return found.length > 0 ? found : NONE;
  });
  return (things, ...circumstances) => flat(findings(things, ...circumstances)) as readonly Found[];
}

const NONE: readonly never[] = [];

/** Lists of one session begin or end alike, so that a run is kept with the first of its things and with the last: it goes with them. */
function runsByTheirEnds() {
  const runs = keptTogether<object, Run | null>();
  const set = ({ things }: Run, run: Run | null) => {
    const first = things[0];
    const last = things[things.length - 1];
    if (first) runs.set(first, run);
    if (last && last !== first) runs.set(last, run);
  };
  const runOf = (thing: object | undefined) => (thing ? (runs.get(thing) ?? undefined) : undefined);
  return {
    akinTo: (things: readonly object[]): Run | undefined =>
      runOf(things[0]) ?? runOf(things[things.length - 1]),
    replace(before: Run | undefined, run: Run): void {
      // What was the last thing may stand in the middle now, and must not keep all that was known then.
      if (before) set(before, null);
      set(run, run);
    },
  };
}

function sameAll(one: readonly unknown[], other: readonly unknown[]): boolean {
  for (let index = 0; index < one.length; index += 1) if (one[index] !== other[index]) return false;
  return true;
}

/** How many things at the end are the same ones, where the lists differ in length. */
function sameAtTheEnd(before: readonly object[], things: readonly object[]): number {
  if (before.length === things.length) return 0;
  let count = 0;
  while (count < things.length && things[things.length - 1 - count] === before[before.length - 1 - count])
    count += 1;
  return count;
}

const flattened = keptWith<readonly (readonly unknown[])[], readonly unknown[]>();
function flat(lists: readonly (readonly unknown[])[]): readonly unknown[] {
  const known = lists.length > FEW ? flattened.get(lists) : undefined;
  if (known) return known;
  const [only = NONE] = lists;
  if (lists.length <= 1) return only;
  const list: unknown[] = [];
  for (const one of lists) for (const found of one) list.push(found);
  const whole = list.length > 0 ? list : NONE;
  if (lists.length > FEW) flattened.set(lists, whole);
  return whole;
}

/** The list as it was last time where nothing in it is another thing for this purpose. */
export function steadyList<Thing>(isSame: (one: Thing, other: Thing) => boolean) {
  let latest: readonly Thing[] = NONE;
  return (list: readonly Thing[]): readonly Thing[] => {
    const same =
      list.length === latest.length && list.every((thing, place) => isSame(thing, latest[place] as Thing));
    if (!same) latest = list;
    return latest;
  };
}

export type Table<Thing> = ReadonlyMap<string, Thing>;

interface Origin {
  readonly things: readonly object[];
  readonly nameOf: (thing: never) => string;
}
const origins = keptWith<object, Origin>();

/** Tables by name, the same one for the same list; what looks things up in them is asked again only about those replaced. */
export function tableBy<Thing extends object>(nameOf: (thing: Thing) => string) {
  const tables = keptWith<readonly Thing[], Table<Thing>>();
  return (things: readonly Thing[]): Table<Thing> => {
    const known = tables.get(things);
    if (known) return known;
    const table = new Map<string, Thing>();
    for (const thing of things) table.set(nameOf(thing), thing);
    tables.set(things, table);
    origins.set(table, { things, nameOf });
    return table;
  };
}

/** What a table no longer has, where others of the same names stand in their places. */
function replacedBetween(before: unknown, now: unknown): readonly object[] | null {
  if (!(before instanceof Map) || !(now instanceof Map)) return null;
  const [old, other] = [origins.get(before), origins.get(now)];
  if (!old || !other || old.nameOf !== other.nameOf) return null;
  const places = changedPlaces(old.things, other.things);
  if (!places) return null;
  const nameOf = old.nameOf as (thing: unknown) => string;
  const replaced: object[] = [];
  for (const place of places) {
    const [one, another] = [old.things[place], other.things[place]];
    if (!one || !another || nameOf(one) !== nameOf(another)) return null;
    replaced.push(one);
  }
  return replaced;
}

/** The values of a table as a list, which is the same list as long as it is the same table. */
export function valuesOf<Value>(table: ReadonlyMap<unknown, Value>): readonly Value[] {
  let list = lists.get(table);
  if (!list) {
    list = [...table.values()];
    lists.set(table, list);
  }
  return list as readonly Value[];
}
const lists = keptWith<ReadonlyMap<unknown, unknown>, readonly unknown[]>();
