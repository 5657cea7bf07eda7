/** Many sessions examined at once: on all cores, in a stable order, and only those that changed since the last time. */
import { readFileSync } from 'node:fs';
import { dirname, resolve } from 'node:path';
import { availableParallelism } from 'node:os';
import { isMainThread, parentPort, Worker, workerData } from 'node:worker_threads';
import { openDocument, type Document } from '../../grammar/document.ts';
import { attempted, isFault, type Fault } from '../../grammar/fault.ts';
import { inspect, type Inspection } from '../inspect.ts';
import { isRefusal, type Refusal } from '../quantities/refusal.ts';
import { diskFiles, rootOf } from './disk-files.ts';
import { examined, untold, type Examined, type View } from './examine.ts';
import { CannotRun, type Io } from './io.ts';
import { harmless } from './terminal-text.ts';
import { contentOf, digestOf, loadAnswers, recorded, saveAnswers, type KeptAnswer } from './kept-answers.ts';
import type { Shard } from './shard.ts';
import { LARGEST_SESSION, readWhole, sessionText } from './read-file.ts';

export interface ArchiveOptions {
  readonly root?: string;
  readonly view: View;
  /** Answers of earlier runs may be used and kept. */
  readonly keep: boolean;
  /** Shares of one archive that are examined on one machine keep their answers apart. */
  readonly share: Shard | null;
}

/** One thread takes so many sessions at a time: enough to be worth the message, few enough to share them fairly. */
const BATCH = 16;

interface Task {
  readonly paths: readonly string[];
  readonly root: string | undefined;
  readonly view: View;
}
interface Answer {
  readonly answers: readonly (KeptAnswer & { readonly path: string })[];
  readonly reasons: readonly string[];
}

export async function examineArchive(
  paths: readonly string[],
  options: ArchiveOptions,
  io: Io,
): Promise<Examined[]> {
  const key = JSON.stringify([
    programDigest(io.program),
    options.view,
    options.root ?? null,
    options.share,
    resolve('.'),
  ]);
  const folder = options.keep ? io.cache : null;
  const known = loadAnswers(folder, key);
  const fresh = stillTrue(paths, known, options.root);
  const stale = paths.filter((path) => !fresh.has(path));
  const reasons: string[] = [];
  let done = fresh.size;
  for await (const { answers, reasons: missing } of answered(stale, options, io)) {
    for (const { path, ...answer } of answers) fresh.set(path, answer);
    reasons.push(...missing);
    done += answers.length;
    if (io.watched) io.complain(`\r${done} of ${paths.length} sessions`);
  }
  if (io.watched) io.complain('\r\u001b[K');
  const unkept = stale.length > 0 ? saveAnswers(folder, key, fresh) : null;
  if (unkept !== null && folder !== null)
    io.complain(
      `tribrach: answers cannot be kept in ${harmless(folder)} (${unkept}); the next run examines all anew, as with --no-cache\n`,
    );
  if (reasons.length > 0) throw new CannotRun(reasons.sort());
  return paths.flatMap((path) => fresh.get(path)?.examined ?? []);
}

/** Answers whose session, and every file that it draws on, is what it was. */
function stillTrue(
  paths: readonly string[],
  known: ReadonlyMap<string, KeptAnswer>,
  root: string | undefined,
): Map<string, KeptAnswer> {
  const seen = new Map<string, string>();
  const now = (path: string, limit: string) => {
    const digest = seen.get(path) ?? contentOf(diskFiles(limit, '.').bytes(path));
    seen.set(path, digest);
    return digest;
  };
  const still = new Map<string, KeptAnswer>();
  for (const path of paths) {
    const answer = known.get(path);
    if (!answer) continue;
    const read = readWhole(path, LARGEST_SESSION);
    if (isRefusal(read) || digestOf(read.bytes) !== answer.text) continue;
    const limit = root ?? rootOf(dirname(path));
    if (answer.uses.every(([used, digest]) => now(used, limit) === digest)) still.set(path, answer);
  }
  return still;
}

/** Answers as they come, from as many threads as there are cores; from this one where there is no program to start. */
async function* answered(
  paths: readonly string[],
  { root, view }: ArchiveOptions,
  io: Io,
): AsyncGenerator<Answer> {
  const tasks: Task[] = [];
  for (let at = 0; at < paths.length; at += BATCH)
    tasks.push({ paths: paths.slice(at, at + BATCH), root, view });
  const threads = Math.min(availableParallelism(), tasks.length);
  if (io.program === null || threads < 2) {
    for (const task of tasks) yield answerTo(task);
    return;
  }
  yield* fromThreads(tasks, threads, io.program);
}

async function* fromThreads(tasks: Task[], threads: number, program: string): AsyncGenerator<Answer> {
  const ready: Answer[] = [];
  let failure: Error | null = null;
  let wake = () => {};
  let open = tasks.length;
  const queue = [...tasks];
  const workers = Array.from(
    { length: threads },
    () =>
      new Worker(program, {
        workerData: THREAD,
        stderr: false,
        resourceLimits: { maxYoungGenerationSizeMb: YOUNG_MEGABYTES },
      }),
  );
  for (const worker of workers) {
    const next = () => {
      const task = queue.shift();
      if (task) worker.postMessage(task);
      else worker.postMessage(null);
    };
    worker.on('message', (answer: Answer) => {
      ready.push(answer);
      wake();
      next();
    });
    worker.on('error', (error) => {
      failure = error;
      wake();
    });
    next();
  }
  try {
    while (open > 0) {
      if (ready.length === 0 && !failure) await new Promise<void>((resolved) => (wake = resolved));
      if (failure) throw failure;
      for (const answer of ready.splice(0)) {
        open -= 1;
        yield answer;
      }
    }
  } finally {
    for (const worker of workers) void worker.terminate();
  }
}

/**
 * Room for what a thread makes before the young generation is swept. A sweep copies what is still needed, which is the
 * few sessions being examined, so it is worth doing for a hundred sessions at a time and not for ten.
 */
const YOUNG_MEGABYTES = 192;

/** How a thread of this program knows that it is one. */
const THREAD = 'tribrach archive';
export const isArchiveThread = () => !isMainThread && workerData === THREAD;

/** The work of a thread: answer one task after the other until there is none. */
export function serveArchive(): void {
  const port = parentPort;
  port?.on('message', (task: Task | null) => {
    if (task) port.postMessage(answerTo(task));
    else port.close();
  });
}

/**
 * So many sessions go through each stage together: reading and parsing, computing, telling. A stage that follows itself
 * finds its code and what it looks up at hand; with more sessions than this they are no longer at hand for the next.
 */
const TOGETHER = 8;

function answerTo({ paths, root, view }: Task): Answer {
  const answers: Answer['answers'][number][] = [];
  const reasons: string[] = [];
  const roots = new Map<string, string>();
  for (let at = 0; at < paths.length; at += TOGETHER) {
    const opened = paths.slice(at, at + TOGETHER).flatMap((path) => open(path));
    const waiting: (() => void)[] = [];
    for (const one of opened) {
      // Files of their own for each session. What it draws on is let go before the next: a recording fills the memory.
      const { files, uses } = recorded(diskFiles(root ?? rootFor(dirname(one.path)), '.'));
      const inspection = attempted(() => inspect(one.document, files));
      const tell = () => answers.push(answerOn(one, inspection, uses));
      if (uses().length > 0) tell();
      else waiting.push(tell);
    }
    for (const tell of waiting) tell();
  }
  return { answers, reasons };

  function answerOn({ path, text }: Opened, inspection: Inspection | Fault, uses: () => KeptAnswer['uses']) {
    const answer = isFault(inspection) ? untold(path, inspection, view) : examined(path, inspection, view);
    return { path, text, uses: uses(), examined: answer };
  }

  function open(path: string): Opened[] {
    const read = readWhole(path, LARGEST_SESSION);
    if (isRefusal(read)) return unreadable(path, read);
    const text = sessionText(read.bytes);
    if (isRefusal(text)) return unreadable(path, text);
    return [{ path, text: digestOf(read.bytes), document: openDocument(path, text) }];
  }

  function unreadable(path: string, { refused }: Refusal): [] {
    reasons.push(`cannot read ${path}: ${refused}`);
    return [];
  }

  function rootFor(folder: string): string {
    const found = roots.get(folder) ?? rootOf(folder);
    roots.set(folder, found);
    return found;
  }
}

interface Opened {
  readonly path: string;
  /** Of its text, as a digest. */
  readonly text: string;
  readonly document: Document;
}

/** Another build of the program may answer otherwise. */
const programDigest = (program: string | null) => (program === null ? '' : digestOf(readFileSync(program)));
