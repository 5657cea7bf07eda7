/** Watches the heads of messages on a stream: where one says no length that can be read, all that follows is noise. */

/** Bytes; no text that an editor has open comes near. */
const LONGEST = 512 * 1024 * 1024;
const LONGEST_HEAD = 16 * 1024;

/**
 * Sees each piece that arrives; answers why nothing further can be understood, or null for as long as all is well.
 * The library behind it would wait for ever, without a word.
 */
export function framingWatch(): (piece: Uint8Array) => string | null {
  let head = '';
  /** Of a body, bytes that are still to come. */
  let left = 0;
  let broken: string | null = null;

  function headEnds(): void {
    const lengths = [...head.matchAll(/^content-length:[ \t]*(.*?)[ \t]*$/gim)].map(
      ([, typed = '']) => typed,
    );
    const [length] = lengths;
    if (length === undefined) broken = 'a message has no Content-Length';
    else if (!/^\d{1,15}$/.test(length) || Number(length) > LONGEST)
      broken = `a message has the Content-Length ${JSON.stringify(length.slice(0, 40))}, and it is to be at most ${LONGEST}`;
    else left = Number(length);
    head = '';
  }

  return (piece) => {
    for (let at = 0; at < piece.length && broken === null;) {
      if (left > 0) {
        const taken = Math.min(left, piece.length - at);
        left -= taken;
        at += taken;
        continue;
      }
      head += String.fromCharCode(piece[at] ?? 0);
      at += 1;
      if (head.endsWith('\r\n\r\n')) headEnds();
      else if (head.length > LONGEST_HEAD) broken = 'what comes is no message: its head does not end';
    }
    return broken;
  };
}
