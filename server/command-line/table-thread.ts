/** Writes the blocks of tables: itself while they are few, then by a thread beside, while this one reads and repairs. */
import { writeSync } from 'node:fs';
import { availableParallelism } from 'node:os';
import { isMainThread, parentPort, Worker, workerData } from 'node:worker_threads';
import { FileText } from '../record/file-text.ts';
import { writeBlock, type TableBlock, type TableForm } from '../record/points/table-block.ts';
import { CannotRun } from './io.ts';
import type { NewFile } from './new-folder.ts';
import { reasonOf } from './read-file.ts';

export interface TableWriter {
  readonly write: (block: TableBlock, form: TableForm, file: NewFile) => void;
  /** Waits while the thread is behind, so that memory stays bounded. */
  readonly room: () => Promise<void>;
  /** Waits until everything is written. */
  readonly finish: () => Promise<void>;
  /** Nothing is written any more when this is done. */
  readonly stop: () => Promise<void>;
}

/** A thread takes some tenths of a second to start; that is worth its while for longer tables only. */
const BLOCKS_ALONE = 16;
const MOST_WAITING = 8;

interface Task {
  readonly block: TableBlock;
  readonly form: TableForm;
  readonly name: string;
  readonly descriptor: number;
}
/** Null for what is done, else a sentence that says why it could not be. */
type Answer = string | null;

/** @param program to start a thread of; null where there is none */
export function tableWriter(program: string | null): TableWriter {
  let thread: Worker | null = null;
  let alone = program !== null && availableParallelism() > 1 ? BLOCKS_ALONE : Infinity;
  let waiting = 0;
  let failure: Error | null = null;
  let wake = () => {};
  const fail = (error: Error) => {
    failure ??= error;
    wake();
  };
  const start = (path: string) => {
    const started = new Worker(path, { workerData: THREAD });
    started.on('message', (answer: Answer) => {
      waiting -= 1;
      if (answer !== null) fail(new CannotRun([answer]));
      wake();
    });
    started.on('error', fail);
    return started;
  };
  const until = async (few: number) => {
    while (waiting > few && !failure) await new Promise<void>((resolved) => (wake = resolved));
    if (failure) throw failure;
  };
  return {
    write(block, form, file) {
      if (alone > 0 || program === null) {
        alone -= 1;
        writeBlock(block, form, file.text);
        return file.spill();
      }
      thread ??= start(program);
      waiting += 1;
      const task: Task = { block, form, name: file.name, descriptor: file.handOver() };
      thread.postMessage(task, [
        block.numbers.buffer,
        block.texts.buffer,
        block.ends.buffer,
      ] as ArrayBuffer[]);
    },
    room: () => until(MOST_WAITING),
    finish: () => until(0),
    async stop() {
      await thread?.terminate();
    },
  };
}

/** How a thread of this program knows that it is one. */
const THREAD = 'tribrach table';
export const isTableThread = () => !isMainThread && workerData === THREAD;

/** The work of the thread: write one block after the other until it is stopped. */
export function serveTables(): void {
  const port = parentPort;
  const text = new FileText();
  port?.on('message', ({ block, form, name, descriptor }: Task) => {
    let answer: Answer = null;
    try {
      writeBlock(block, form, text);
      const bytes = text.taken();
      for (let done = 0; done < bytes.length;) done += writeSync(descriptor, bytes, done);
    } catch (error) {
      answer = `cannot write ${name}: ${reasonOf(error)}`;
    }
    port.postMessage(answer);
  });
}
