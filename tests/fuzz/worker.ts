/** Fuzzes in a thread of its own, round after round, and says what it is about to try, so that a watcher can tell a hang. */
import { parentPort, workerData } from 'node:worker_threads';
import { stringify } from 'fast-check';
import type { Broken } from './target.ts';
import { TARGETS } from './targets.ts';

export interface Orders {
  readonly seed: number;
  readonly minutes: number;
  /** Of these targets; of all where there is none. */
  readonly only: readonly string[];
  /** The case of the first round whose input is to be told before it is tried. */
  readonly show: number | null;
  /** A broken law ends it all. */
  readonly stopAtFirst: boolean;
}
export type News =
  | { readonly news: 'trying'; readonly target: string; readonly seed: number; readonly number: number }
  | { readonly news: 'input'; readonly input: string }
  | { readonly news: 'broken'; readonly broken: Broken }
  | { readonly news: 'done'; readonly rounds: number; readonly cases: number };

const orders = workerData as Orders;
const tell = (news: News) => parentPort?.postMessage(news);

const targets = TARGETS.filter(({ name }) => orders.only.length === 0 || orders.only.includes(name));
const given = new Set<string>();
let [rounds, cases] = [0, 0];
const end = Date.now() + orders.minutes * 60_000;
for (let more = targets.length > 0; more; rounds++) {
  for (const { name, round, cases: count } of targets) {
    if (Date.now() >= end && rounds > 0) break;
    const broken = await round(orders.seed + rounds, count, ({ target, seed, number, input }) => {
      cases += 1;
      tell({ news: 'trying', target, seed, number });
      if (orders.show === number) tell({ news: 'input', input: stringify(input) });
    });
    if (!broken) continue;
    // The same law broken by another input is told once.
    const first = broken.because.split('\n').slice(0, 1).join();
    if (!given.has(`${name} ${first}`)) tell({ news: 'broken', broken });
    given.add(`${name} ${first}`);
    if (orders.stopAtFirst) break;
  }
  more = Date.now() < end && !(orders.stopAtFirst && given.size > 0);
}
tell({ news: 'done', rounds, cases });
