/** A text as the language writes it, on one line whatever it held. */
export const quoted = (text: string) => `"${text.replaceAll('"', '""').replace(/[\r\n]+/g, ' ')}"`;
