/** What the columns of a points file mean: role, unit, surface and clock of each, and how the file is written. */

import { LENGTH_UNITS } from '../../../grammar/units.ts';

export type ColumnRole =
  | 'name'
  | 'east'
  | 'north'
  | 'west'
  | 'south'
  | 'height'
  | 'latitude'
  | 'longitude'
  | 'x'
  | 'y'
  | 'z'
  | 'code'
  | 'time'
  | 'state'
  | 'solution'
  | 'epochs'
  | 'pdop'
  | 'satellites'
  | 'spread'
  | 'skip';

/** A unit of length; `°` is decimal degrees; `dms` degrees, minutes and seconds with blanks, colons or their signs between. */
export type ColumnUnit = string;
export const COLUMN_UNITS: readonly ColumnUnit[] = [...LENGTH_UNITS.map(({ unit }) => unit), '°', 'dms'];

/** Whose time a column tells, where the cell itself does not end in Z or an offset. */
export type ColumnClock = 'local' | 'utc' | 'gps';

export interface Column {
  readonly role: ColumnRole;
  /** Metres for lengths and decimal degrees for angles, where not stated. */
  readonly unit?: ColumnUnit;
  /** Of a height: orthometric, ellipsoidal, or the name of a surface. */
  readonly surface?: string;
  /** UTC where not stated. */
  readonly clock?: ColumnClock;
  /** The file's own name of the column, where the file's heading decides the order. */
  readonly heading?: string;
}

export interface ColumnPlan {
  /** In the order of the file, or in any order where the heading decides. */
  readonly columns: readonly Column[];
  readonly separator: ',' | ';' | '\t';
  readonly decimal: '.' | ',';
  /** No heading; one line to pass over; or one line whose names say which column is which. */
  readonly heading: 'none' | 'skip' | 'names';
  /** The local day of times without a date, YYYY-MM-DD, whichever clock they are told by. */
  readonly date?: string;
  /** When a base stood, in UTC seconds since 1970, where that goes on past the midnight behind `date`. */
  readonly stood?: readonly { readonly from: number; readonly until: number }[];
  /** Local time less UTC, in seconds. */
  readonly utcOffset?: number;
  /** GPS time less UTC, an assumption where it is used. */
  readonly leapSeconds?: number;
}

/** Why a plan cannot be followed; empty where it can. */
export function planProblems({ columns, separator, decimal, heading }: ColumnPlan): readonly string[] {
  const roles = columns.map((column) => column.role).filter((role) => role !== 'skip');
  const twice = roles.find((role, index) => roles.indexOf(role) !== index);
  const unnamed = columns.find((column) => heading === 'names' && column.role !== 'skip' && !column.heading);
  return [
    ...(columns.length === 0
      ? ['What the columns mean is not said; nothing is read from them. Write a line `columns`.']
      : []),
    ...(twice ? [`Two columns are called ${twice}.`] : []),
    ...(separator === ',' && decimal === ','
      ? ['A comma cannot be both the separator and the decimal sign.']
      : []),
    ...(unnamed ? [`The column ${unnamed.role} does not say which heading it has in the file.`] : []),
  ];
}
