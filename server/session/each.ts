/** Lists of answers, one for each of a list of things: after an edit only the things that changed are asked about again. */

interface Run {
  readonly things: readonly object[];
  readonly circumstances: readonly unknown[];
  readonly inputs: readonly (readonly unknown[])[];
  readonly answers: readonly unknown[];
}

/** As many sessions are edited in turn without forgetting one another. */
const KEPT = 4;

/**
 * The answers to each thing, in order, from what it takes out of the circumstances. All are compared by identity with
 * those of the last lists, which is quicker than asking a memory about each; where no answer has changed, the same list
 * comes back.
 *
 * @param inputsOf what of the circumstances an answer rests on; looked for only where the circumstances have changed
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
  let runs: readonly Run[] = [];
  return (things, ...circumstances) => {
    if (things.length === 0) return NONE;
    const before = runs.find((run) => akin(run, things));
    const unchanged = before !== undefined && sameAll(before.circumstances, circumstances);
    if (unchanged && before.things === things) return before.answers as readonly Answer[];
    const shift = before ? things.length - before.things.length : 0;
    const behind = before ? sameAtTheEnd(before.things, things) : 0;
    const inputs: (readonly unknown[])[] = [];
    const answers: Answer[] = [];
    let changed = !before || shift !== 0;
    for (let index = 0; index < things.length; index += 1) {
      const thing = things[index] as Thing;
      // Where things were put in or taken out, those before and those behind are the same ones as before.
      const earlier = things.length - index <= behind ? index - shift : index;
      const known = before?.things[earlier] === thing ? before.inputs[earlier] : undefined;
      const own = known && unchanged ? known : inputsOf(thing, ...circumstances);
      const found =
        known && sameAll(known, own) ? before?.answers[earlier] : answer(thing, ...(own as Inputs));
      changed ||= found !== before?.answers[earlier];
      inputs.push(own);
      answers.push(found as Answer);
    }
    const kept = changed ? answers : ((before?.answers ?? answers) as readonly Answer[]);
    runs = [{ things, circumstances, inputs, answers: kept }, ...runs.filter((run) => run !== before)].slice(
      0,
      KEPT,
    );
    return kept;
  };
}

/** The answers to each thing under the same circumstances, which each of them rests on. */
export const answersToEach = <Thing extends object, Circumstances extends readonly unknown[], Answer>(
  answer: (thing: Thing, ...circumstances: Circumstances) => Answer,
) => answersFrom((_: Thing, ...circumstances: Circumstances) => circumstances, answer);

/** What is found in each thing, in one list; nothing in most, as a rule. */
export function foundInEach<Thing extends object, Circumstances extends readonly unknown[], Found>(
  find: (thing: Thing, ...circumstances: Circumstances) => readonly Found[],
): (things: readonly Thing[], ...circumstances: Circumstances) => readonly Found[] {
  const findings = answersToEach(find);
  return (things, ...circumstances) => flat(findings(things, ...circumstances)) as readonly Found[];
}

const NONE: readonly never[] = [];

/** Lists of one session begin or end alike. */
const akin = ({ things }: Run, others: readonly object[]) =>
  things[0] === others[0] || things[things.length - 1] === others[others.length - 1];

const sameAll = (one: readonly unknown[], other: readonly unknown[]) =>
  one.every((circumstance, index) => circumstance === other[index]);

/** How many things at the end are the same ones, where the lists differ in length. */
function sameAtTheEnd(before: readonly object[], things: readonly object[]): number {
  if (before.length === things.length) return 0;
  let count = 0;
  while (count < things.length && things[things.length - 1 - count] === before[before.length - 1 - count])
    count += 1;
  return count;
}

const flattened = new WeakMap<readonly (readonly unknown[])[], readonly unknown[]>();
function flat(lists: readonly (readonly unknown[])[]): readonly unknown[] {
  let list = flattened.get(lists);
  if (!list) {
    list = lists.some((one) => one.length > 0) ? lists.flat() : NONE;
    flattened.set(lists, list);
  }
  return list;
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
const lists = new WeakMap<ReadonlyMap<unknown, unknown>, readonly unknown[]>();
