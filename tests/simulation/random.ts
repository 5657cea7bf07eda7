/** A seeded random generator, so that every simulated day can be drawn again. */
export interface Random {
  readonly uniform: (low: number, high: number) => number;
  /** Uniform in the logarithm: as many draws between 0.1 and 1 as between 1 and 10. */
  readonly logUniform: (low: number, high: number) => number;
  readonly normal: (standardDeviation: number) => number;
  /** A whole number from 0 up to, not including, the count. */
  readonly below: (count: number) => number;
  readonly chance: (probability: number) => boolean;
  /** An independent stream, the same for the same seed and label however much has been drawn. */
  readonly fork: (label: string) => Random;
}

/** sfc32 (C. Doty-Humphrey, PractRand), normals by the Box–Muller transform. */
export function seededRandom(seed: number | string): Random {
  const next = smallFastCounter(String(seed));
  const uniform = (low: number, high: number): number => low + (high - low) * next();
  return {
    uniform,
    logUniform: (low, high) => Math.exp(uniform(Math.log(low), Math.log(high))),
    normal: (standardDeviation) =>
      standardDeviation * Math.sqrt(-2 * Math.log(1 - next())) * Math.cos(2 * Math.PI * next()),
    below: (count) => Math.floor(next() * count),
    chance: (probability) => next() < probability,
    fork: (label) => seededRandom(`${String(seed)}/${label}`),
  };
}

/** Uniform in [0, 1), 32 bits a draw. */
function smallFastCounter(seed: string): () => number {
  let a = hashed(seed, 0x811c9dc5);
  let b = hashed(seed, 0x9e3779b9);
  let c = hashed(seed, 0x7f4a7c15);
  let counter = 1;
  const next = (): number => {
    const sum = (a + b + counter) | 0;
    counter = (counter + 1) | 0;
    a = b ^ (b >>> 9);
    b = (c + (c << 3)) | 0;
    c = ((c << 21) | (c >>> 11)) + sum;
    return (sum >>> 0) / 4294967296;
  };
  for (let warmUp = 0; warmUp < 16; warmUp++) next();
  return next;
}

/** FNV-1a from a given basis. */
function hashed(text: string, basis: number): number {
  let hash = basis;
  for (let at = 0; at < text.length; at++) hash = Math.imul(hash ^ text.charCodeAt(at), 0x01000193);
  return hash | 0;
}
