/** Answers of earlier runs, kept by the content of everything that they rest on; the file may be deleted at any time. */
import { createHash } from 'node:crypto';
import { mkdirSync, readFileSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { isRefusal } from '../quantities/refusal.ts';
import type { Files } from '../session/files.ts';
import type { Examined } from './examine.ts';

/** What one session's answer rests on: its own text, and each file that was asked for, as it was then. */
export interface KeptAnswer {
  readonly text: string;
  readonly uses: readonly (readonly [path: string, digest: string])[];
  readonly examined: Examined;
}
export type KeptAnswers = Map<string, KeptAnswer>;

export const digestOf = (content: Uint8Array | string) =>
  createHash('sha256').update(content).digest('hex').slice(0, 32);

/** @param key all that the answers depend on beside the files: the program itself, the view, the folders */
export function loadAnswers(folder: string | null, key: string): KeptAnswers {
  if (folder === null) return new Map();
  try {
    const data: unknown = JSON.parse(readFileSync(fileOf(folder, key), 'utf8'));
    return Array.isArray(data) ? new Map(data as [string, KeptAnswer][]) : new Map();
  } catch {
    return new Map();
  }
}

/** Whole or not at all; a folder that cannot be written to only makes the next run slower. */
export function saveAnswers(folder: string | null, key: string, answers: KeptAnswers): void {
  if (folder === null) return;
  const file = fileOf(folder, key);
  const beside = `${file}.${process.pid}`;
  try {
    mkdirSync(folder, { recursive: true });
    writeFileSync(beside, JSON.stringify([...answers]));
    renameSync(beside, file);
  } catch {
    rmSync(beside, { force: true });
  }
}

const fileOf = (folder: string, key: string) => join(folder, `check-${digestOf(key)}.json`);

/** Files that remember what was asked of them. */
export function recorded(files: Files): { readonly files: Files; readonly uses: () => KeptAnswer['uses'] } {
  const asked = new Map<string, string>();
  return {
    files: {
      document: (path) => {
        const document = files.document(path);
        asked.set(path, isRefusal(document) ? `! ${document.refused}` : digestOf(document.text));
        return document;
      },
      bytes: (path) => {
        const bytes = files.bytes(path);
        asked.set(path, contentOf(bytes));
        return bytes;
      },
    },
    uses: () => [...asked],
  };
}

export const contentOf = (bytes: ReturnType<Files['bytes']>) =>
  isRefusal(bytes) ? `! ${bytes.refused}` : digestOf(bytes);
