/**
 * What the engine compiled of the program in earlier runs, kept in the cache folder: compiling takes longer than checking
 * a day. It is never needed: where it is missing, damaged or of another engine, the program is compiled anew.
 */
import { createHash } from 'node:crypto';
import { mkdirSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { putBeside } from './beside.ts';

export interface Compiled {
  /** Commands whose functions are in it. */
  readonly commands: readonly string[];
  readonly data: Buffer;
}

/** @param key whatever the program's text and the engine are told apart by */
export function loadCompiled(folder: string, key: string): Compiled | null {
  try {
    const file = readFileSync(fileOf(folder, key));
    const end = file.indexOf(0x0a);
    const [digest = '', ...commands] = file.toString('latin1', 0, end).split(' ');
    const data = file.subarray(end + 1);
    // The engine trusts what it is given, so a byte that was lost on the way must not reach it.
    return digest === digestOf(data) ? { commands, data } : null;
  } catch {
    return null;
  }
}

/** Whole or not at all, in the place of those of other programs and engines. */
export function saveCompiled(folder: string, key: string, { commands, data }: Compiled): void {
  try {
    mkdirSync(folder, { recursive: true });
    const head = Buffer.from(`${[digestOf(data), ...commands].join(' ')}\n`, 'latin1');
    putBeside(fileOf(folder, key), Buffer.concat([head, data]), 0o600);
    for (const name of readdirSync(folder))
      if (KEPT.test(name) && join(folder, name) !== fileOf(folder, key)) rmSync(join(folder, name));
  } catch {
    // The next run takes longer to start, and that is all.
  }
}

const KEPT = /^compiled-[0-9a-f]{16}\.bin$/;
const fileOf = (folder: string, key: string) => join(folder, `compiled-${digestOf(key).slice(0, 16)}.bin`);
const digestOf = (content: string | Uint8Array) =>
  createHash('sha256').update(content).digest('hex').slice(0, 32);
