/** Days and seconds of the civil calendar in UTC, without leap seconds, as whole numbers to reckon with. */

export const secondsOfDay = 86_400;

/** Days since 1970-01-01; undefined where the calendar has no such day. */
export function dayNumber(year: number, month: number, day: number): number | undefined {
  if (![year, month, day].every(Number.isInteger) || year < 1900 || year > 2200) return undefined;
  const milliseconds = Date.UTC(year, month - 1, day);
  const read = new Date(milliseconds);
  return read.getUTCMonth() === month - 1 && read.getUTCDate() === day
    ? milliseconds / 1000 / secondsOfDay
    : undefined;
}

/** Days since 1970-01-01 of a date written YYYY-MM-DD. */
export function dayNumberOfIso(date: string): number | undefined {
  const parts = /^(\d{4})-(\d{2})-(\d{2})$/.exec(date);
  return parts ? dayNumber(Number(parts[1]), Number(parts[2]), Number(parts[3])) : undefined;
}

/** The remainder of a division that is never negative. */
export function modulo(value: number, by: number): number {
  return ((value % by) + by) % by;
}
