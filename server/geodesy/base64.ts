/** Bytes out of base64 text (RFC 4648, section 4), in any JavaScript host. */

export function bytesOfBase64(text: string): Uint8Array {
  const end = text.endsWith('==') ? text.length - 2 : text.endsWith('=') ? text.length - 1 : text.length;
  const bytes = new Uint8Array(Math.floor((end * 3) / 4));
  let held = 0;
  let written = 0;
  for (let at = 0; at < end; at++) {
    held = ((held << 6) | (VALUES[text.charCodeAt(at)] ?? 0)) & 0xffffff;
    if (at % 4 === 1) bytes[written++] = held >> 4;
    else if (at % 4 === 2) bytes[written++] = held >> 2;
    else if (at % 4 === 3) bytes[written++] = held;
  }
  return bytes;
}

const ALPHABET = 'ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789+/';
const VALUES = new Uint8Array(128);
for (const [value, letter] of [...ALPHABET].entries()) VALUES[letter.charCodeAt(0)] = value;
