/** What of a session is drawn: all of it in a record, and beside the text of a long one what lies around the cursor. */
import type { Place } from '../../../grammar/tree.ts';
import type { CheckValues } from '../../derive/checks/check.ts';
import type { SetupValues } from '../../derive/setups/setup.ts';
import type { Inspection } from '../../inspect.ts';
import type { Event } from '../../session/entries.ts';
import { instantOf } from '../../session/session.ts';
import { whereIs } from '../../session/where.ts';

export interface Shown {
  readonly setups: readonly SetupValues[];
  readonly checks: readonly CheckValues[];
  readonly events: readonly Event[];
  /** Says what is left out; null where nothing is. */
  readonly part: string | null;
}

/** More than these nobody looks through beside the text, and each keystroke would wait for them. */
const MOST = { setups: 12, checks: 48 };

export const allShown = ({ derivation, session }: Inspection): Shown => ({
  setups: [...derivation.setups.values()],
  checks: derivation.checks,
  events: session.events,
  part: null,
});

/**
 * In a long session the twelve setups that the cursor's is one of, with their checks: page by page, so that small steps
 * of the cursor change nothing.
 * @param line of the cursor, from 1; null where it is not known
 */
export function shownAround(inspection: Inspection, line: number | null): Shown {
  const all = allShown(inspection);
  if (all.setups.length <= MOST.setups && all.checks.length <= MOST.checks) return all;
  const check = lastBefore(inspection, all.checks, ({ check: { place } }) => place, line);
  const setup = lastBefore(inspection, all.setups, ({ setup: { place } }) => place, line);
  const own = check !== null && (setup === null || check.line > setup.line) ? check.found.setup : null;
  const setups = pageAround(all.setups, own ?? setup?.found ?? null, MOST.setups);
  const chosen = new Set(setups);
  const theirs = all.checks.filter((one) => one.setup === null || chosen.has(one.setup));
  const checks = pageAround(theirs, check?.found ?? null, MOST.checks);
  const events = eventsWhile(inspection, setups, all.events);
  return { setups, checks, events, part: partInWords(all, setups, checks) };
}

/** The last thing that begins at the line or before it. */
function lastBefore<Thing>(
  { session }: Inspection,
  things: readonly Thing[],
  placeOf: (thing: Thing) => Place,
  line: number | null,
): { readonly found: Thing; readonly line: number } | null {
  let last: { readonly found: Thing; readonly line: number } | null = null;
  for (const thing of line === null ? [] : things) {
    const where = whereIs(session, placeOf(thing));
    if (where.path !== session.document.path || where.line > (line ?? 0)) continue;
    if (last === null || where.line >= last.line) last = { found: thing, line: where.line };
  }
  return last;
}

function pageAround<Thing>(things: readonly Thing[], wanted: Thing | null, size: number): readonly Thing[] {
  const index = wanted === null ? 0 : Math.max(0, things.indexOf(wanted));
  const first = Math.floor(index / size) * size;
  return things.slice(first, first + size);
}

/** What happened while one of these stood, or at no known time. */
function eventsWhile(
  { session }: Inspection,
  setups: readonly SetupValues[],
  events: readonly Event[],
): readonly Event[] {
  const names = new Set(setups.map(({ setup }) => setup.name));
  return events.filter(({ at, on }) => {
    if (on && !names.has(on.name)) return false;
    const instant = instantOf(at, session.job);
    return (
      instant === null ||
      setups.some(
        ({ from, until }) => (from === null || from <= instant) && (until === null || instant <= until),
      )
    );
  });
}

function partInWords(
  all: Shown,
  setups: readonly SetupValues[],
  checks: readonly CheckValues[],
): string | null {
  const parts = [
    setups.length < all.setups.length ? `${setups.length} of ${all.setups.length} setups` : null,
    checks.length < all.checks.length ? `${checks.length} of ${all.checks.length} checks` : null,
  ].filter((part) => part !== null);
  if (parts.length === 0) return null;
  return `${parts.join(' and ')} are drawn, those around the cursor. The report of the session draws all.`;
}
