/** Bytes for fuzzing: whole files of each kind, and what may happen to them on the way. */
import fc from 'fast-check';

const fraction = fc.double({ min: 0, max: 1, noNaN: true, maxExcluded: true });
const harm = fc.record({
  what: fc.constantFrom('flipped', 'cut', 'dropped', 'doubled', 'put', 'figure', 'whole'),
  at: fraction,
  length: fc.oneof(fc.integer({ min: 1, max: 8 }), fc.integer({ min: 1, max: 400 })),
  bits: fc.integer({ min: 1, max: 255 }),
  put: fc.uint8Array({ maxLength: 12 }),
  figure: fc.constantFrom(
    '0',
    '9',
    '-',
    '.',
    ',',
    ' ',
    '"',
    "'",
    '\n',
    '\r',
    '*',
    '$',
    'e',
    'N',
    '\t',
    '=',
    '\0',
  ),
  whole: fc.constantFrom(0, 1, 0x7fffffff, 0x80000000, 0xffffffff, 0x10000, 0xffff, 0xff),
});
type Harm = typeof harm extends fc.Arbitrary<infer Of> ? Of : never;

/** One of these files after some harm; one in ten is nothing but noise. */
export const harmed = (wholes: readonly Uint8Array[]): fc.Arbitrary<Uint8Array> =>
  fc.oneof(
    {
      weight: 9,
      arbitrary: fc
        .tuple(fc.constantFrom(...wholes), fc.array(harm, { maxLength: 6 }))
        .map(([whole, harms]) => harms.reduce(after, whole)),
    },
    { weight: 1, arbitrary: fc.uint8Array({ maxLength: 3000 }) },
  );

function after(bytes: Uint8Array, { what, at, length, bits, put, figure, whole }: Harm): Uint8Array {
  const from = Math.floor(at * bytes.length);
  const changed = bytes.slice();
  switch (what) {
    case 'flipped':
      if (from < bytes.length) changed[from] = (bytes[from] ?? 0) ^ bits;
      return changed;
    case 'cut':
      return bytes.slice(0, from);
    case 'dropped':
      return joined(bytes.subarray(0, from), bytes.subarray(from + length));
    case 'doubled':
      return joined(bytes.subarray(0, from + length), bytes.subarray(from));
    case 'put':
      return joined(bytes.subarray(0, from), put, bytes.subarray(from));
    case 'figure':
      if (from < bytes.length) changed[from] = figure.charCodeAt(0);
      return changed;
    case 'whole':
      if (from + 4 <= bytes.length) new DataView(changed.buffer).setUint32(from, whole, bits % 2 === 0);
      return changed;
  }
}

export const joined = (...parts: readonly Uint8Array[]): Uint8Array => new Uint8Array(Buffer.concat(parts));

/** Where a stream is cut into chunks, as lengths that are taken in turn. */
export const cuts = fc.array(fc.integer({ min: 1, max: 700 }), { minLength: 1, maxLength: 5 });

export function chunked(
  bytes: Uint8Array,
  lengths: readonly number[],
  push: (chunk: Uint8Array) => void,
): void {
  let at = 0;
  for (let turn = 0; at < bytes.length; turn++) {
    const length = lengths[turn % lengths.length] ?? 1;
    push(bytes.subarray(at, at + length));
    at += length;
  }
}

export const bytesOf = (text: string): Uint8Array => new TextEncoder().encode(text);
