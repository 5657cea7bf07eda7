/** A session of exactly so many lines, at least 60. */
export function sessionOf(lineCount: number): string;
/** A JSON text of exactly so many lines. */
export function jsonOf(lineCount: number): string;
