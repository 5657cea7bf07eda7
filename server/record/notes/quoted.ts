/** A text as the language writes it, on one line whatever it held; a NUL, which no text file holds, is a blank. */
export const quoted = (text: string) =>
  `"${text
    .replaceAll('"', '""')
    .replaceAll('\0', ' ')
    .replace(/[\r\n]+/g, ' ')}"`;
