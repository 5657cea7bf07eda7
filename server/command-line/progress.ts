/** A bar on a terminal that says how far a long job has come; nothing where nobody watches, or where it is short. */
import type { Io } from './io.ts';

export interface Progress {
  readonly step: () => void;
  readonly finish: () => void;
}

const POINTS = { every: 20_000, told: (count: number) => `${count.toLocaleString('en')} points` };
const WIDTH = 30;

/**
 * @param fraction of the job that is done, as far as that is known
 * @param steps how many steps lie between two looks at it, and what is told of them
 */
export function progressOf(
  name: string,
  fraction: () => number | null,
  io: Pick<Io, 'complain' | 'watched'>,
  steps: { readonly every: number; readonly told: (count: number) => string } = POINTS,
): Progress {
  let count = 0;
  let shown = false;
  const show = () => {
    shown = true;
    const done = fraction();
    const filled = done === null ? 0 : Math.round(Math.min(1, done) * WIDTH);
    const bar = done === null ? '' : `[${'='.repeat(filled)}${' '.repeat(WIDTH - filled)}] `;
    io.complain(`\r\u001b[K${bar}${steps.told(count)} of ${plain(name)}`);
  };
  return {
    step() {
      count += 1;
      if (io.watched && count % steps.every === 0) show();
    },
    finish() {
      if (shown) io.complain('\r\u001b[K');
    },
  };
}

/** A name from a file must not move the cursor. */
const plain = (name: string) => name.replace(/[^\p{L}\p{N}\p{P}\p{S} ]/gu, '').slice(0, 40);
