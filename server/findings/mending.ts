/** Whether what hangs under a finding goes away when that is mended: tried on the text, with the fixes that the finding offers. */
import type { Edit, Fix, Reported, Subject } from './finding.ts';
import { CATALOGUE } from './catalogue.ts';
import { nameOf } from './unread.ts';

/**
 * Of findings that hang under others, those that are still there after the others are mended, whichever fix is chosen.
 * All causes are mended at once, so that the cost does not grow with their number.
 *
 * @param rootOf the finding at the top of each one that hangs
 */
export function leftWhenMended(
  rootOf: ReadonlyMap<Reported, Reported>,
  reported: readonly Reported[],
  subject: Subject,
): ReadonlySet<Reported> {
  const roots = [...new Set(rootOf.values())].filter((root) => mendsOf(root).length > 0);
  let left = reported.filter((finding) => roots.some((root) => rootOf.get(finding) === root));
  const rounds = roots.reduce((most, root) => Math.max(most, mendsOf(root).length), 0);
  for (let round = 0; round < Math.min(rounds, MOST_ROUNDS) && left.length > 0; round += 1) {
    const mended = subject.mended?.(editsOf(roots, round)) ?? null;
    if (!mended) return new Set();
    left = leftIn(mended, left, rootOf, reported);
  }
  return new Set(left);
}

/** A number typed with a comma has three readings at most; what is offered beyond is a list of names. */
const MOST_ROUNDS = 4;

/** Fixes that write what was meant; one that leaves the answer open mends nothing yet. */
const mendsOf = ({ fixes }: Reported): readonly Fix[] =>
  fixes.filter(({ edits }) => edits.every(({ text }) => !/[?\r\n]/.test(text)));

/** One fix of each; of two that touch the same text the first. */
function editsOf(roots: readonly Reported[], round: number): Edit[] {
  const edits: Edit[] = [];
  for (const root of roots) {
    const fixes = mendsOf(root);
    const own = fixes[Math.min(round, fixes.length - 1)]?.edits ?? [];
    if (!own.some((edit) => edits.some((other) => overlap(edit, other)))) edits.push(...own);
  }
  return edits;
}

const overlap = ({ place: one }: Edit, { place: other }: Edit) =>
  one.entry === other.entry && one.start <= other.end && other.start <= one.end;

/**
 * As many are left of each code as are found then beyond those that stood on their own before: first those in an entry
 * where one is found, since what is wrong may be told at another place once more can be read.
 */
function leftIn(
  mended: Subject,
  hanging: readonly Reported[],
  rootOf: ReadonlyMap<Reported, Reported>,
  reported: readonly Reported[],
): Reported[] {
  const codes = new Set(hanging.map(({ code }) => code));
  const found = CATALOGUE.filter(({ code }) => codes.has(code)).flatMap((kind) => kind.report(mended));
  const entries = new Set(found.map(entryOf));
  return [...codes].flatMap((code) => {
    const ofCode = (finding: Reported) => finding.code === code;
    const alone = reported.filter((finding) => ofCode(finding) && !rootOf.has(finding)).length;
    const beyond = found.filter(ofCode).length - alone;
    const own = hanging.filter(ofCode);
    const isFound = (finding: Reported) => entries.has(entryOf(finding));
    return [...own.filter(isFound), ...own.filter((one) => !isFound(one))].slice(0, Math.max(0, beyond));
  });
}

/** The entry that a finding lies in, which an edit elsewhere leaves as it is. */
const entryOf = ({ code, place: { entry } }: Reported) =>
  [code, entry.header.word?.word ?? '', nameOf(entry)].join('\u0000');
