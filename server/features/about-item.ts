/** What is known of one item of a line by itself: its word, unit, system, way to a datum, time or day. */
import { unitNamed } from '../../grammar/units.ts';
import type { IsoDate, Item, Time } from '../../grammar/tree.ts';
import { transformationOf } from '../geodesy/datums/transformation.ts';
import { systemOf } from '../geodesy/registry/registry.ts';
import { isRefusal } from '../quantities/refusal.ts';
import { showNumber } from '../quantities/show.ts';
import { isHole } from '../quantities/value.ts';
import type { Session } from '../session/session.ts';
import { COLUMN_WORDS } from './completion/offered-columns.ts';
import { expectedBehind, valuesBehind } from './completion/expected.ts';
import { POINTS } from './completion/offered-names.ts';
import type { HoverBlock } from './hover.ts';

/** @param first the first word of the line; @param at where the pointer is, counted as the item's places are */
export function aboutItem(item: Item, at: number, first: string, session: Session): HoverBlock[] {
  const says = saysOf(item, at, first, session);
  return says === null ? [] : [{ kind: 'says', text: says }];
}

function saysOf(item: Item, at: number, first: string, session: Session): string | null {
  switch (item.kind) {
    case 'sum':
      return unitSays(item, at);
    case 'word':
      return wordSays(item.word, first);
    case 'name':
      return systemSays(item.name) ?? wordSays(item.name, first);
    case 'time':
      return timeSays(item, session);
    case 'date':
      return daySays(item);
    default:
      return null;
  }
}

function unitSays(item: Item & { kind: 'sum' }, at: number): string | null {
  const parts = item.terms.flatMap(({ measure, uncertainty }) =>
    [measure, uncertainty].flatMap((found) => found?.parts ?? []),
  );
  const unit = parts.find((part) => part.unit && part.unit.start <= at && at <= part.unit.end)?.unit;
  const spec = unit && unitNamed(unit.unit);
  return spec ? `${spec.unit}: ${spec.says}.` : null;
}

/** A word that goes on with the phrase, or one of the few that a detail takes. */
function wordSays(word: string, first: string): string | null {
  const columns = first === 'columns' ? COLUMN_WORDS : [];
  const told = [
    ...columns,
    ...valuesBehind(first),
    ...expectedBehind(first).words,
    ...Object.entries(POINTS).map(([point, says]) => ({ word: point, says })),
  ].find((known) => known.word.split(' ').includes(word));
  return told ? `${word}: ${told.says}.` : null;
}

function systemSays(name: string): string | null {
  if (!/^epsg:/i.test(name)) return null;
  const system = systemOf(name);
  if (isRefusal(system)) return waySays(name) ?? system.refused;
  const caution = 'datum' in system ? (system.datum.caution ?? '') : '';
  const area =
    'area' in system && system.area ? ` Area of use: ${system.area.name.replace(/[.]$/, '')}.` : '';
  return `${name}: ${system.name}.${area} ${caution}`.trim();
}

function waySays(code: string): string | null {
  const way = transformationOf(code);
  if (isRefusal(way)) return null;
  return `${code}: ${way.name}, good to ${showNumber(way.accuracy, 1)} m. Area of use: ${way.area.name}`;
}

/** By both clocks, where the job says how they differ. */
function timeSays({ seconds, utc, typed }: Time, { job }: Session): string | null {
  const clock = job?.clock;
  if (seconds === null || !clock || isHole(clock)) return null;
  const other = clockTime(utc ? seconds + clock.seconds : seconds - clock.seconds);
  return utc
    ? `${typed}: ${other} by the clock of the job.`
    : `${typed} by the clock of the job: ${other} UTC.`;
}

function clockTime(seconds: number): string {
  const within = ((seconds % 86_400) + 86_400) % 86_400;
  const parts = [Math.floor(within / 3600), Math.floor(within / 60) % 60];
  const whole = Math.floor(within % 60);
  const text = [...parts, ...(whole > 0 ? [whole] : [])]
    .map((part) => String(part).padStart(2, '0'))
    .join(':');
  return seconds < 0 ? `${text} the day before` : seconds >= 86_400 ? `${text} the day after` : text;
}

const WEEKDAYS = ['Thursday', 'Friday', 'Saturday', 'Sunday', 'Monday', 'Tuesday', 'Wednesday'];

/** 1970-01-01 was a Thursday. */
const daySays = ({ day, typed }: IsoDate): string | null =>
  day === null ? null : `${typed}: a ${WEEKDAYS[((day % 7) + 7) % 7] ?? ''}.`;
