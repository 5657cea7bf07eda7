/** The path that is being typed behind a word that names a file. */

export interface TypedPath {
  /** Relative to the session's own folder; `.` where none was typed. */
  readonly folder: string;
  /** What was typed of the name itself. */
  readonly started: string;
  /** How names end that fit, in small letters; null where any may. */
  readonly endings: readonly string[] | null;
}

/** Null where no path is typed at that column. */
export function pathBefore(line: string, column: number): TypedPath | null {
  const [, word = '', path = ''] = /^\s*(\S+)\s(?:[^"]*\s)?"([^"]*)$/.exec(line.slice(0, column)) ?? [];
  const endings = ENDINGS[word];
  if (endings === undefined || /^[a-z]+:|^[/\\]/i.test(path)) return null;
  const cut = path.lastIndexOf('/') + 1;
  return { folder: path.slice(0, cut) || '.', started: path.slice(cut), endings };
}

/** Words whose text names a file. */
const ENDINGS: Readonly<Record<string, readonly string[] | null>> = {
  use: ['.trib'],
  geoid: ['.gtx', '.tif', '.tiff', '.isg'],
  calibration: ['.atx'],
  photo: ['.jpg', '.jpeg', '.png', '.heic', '.webp'],
  captured: null,
  'raw-log': null,
  ephemerides: null,
  points: null,
  observed: null,
};
