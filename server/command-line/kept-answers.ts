/** Answers of earlier runs, kept by the content of everything that they rest on; the file may be deleted at any time. */
import { createHash } from 'node:crypto';
import { mkdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { SEVERITIES } from '../findings/finding.ts';
import { isRefusal } from '../quantities/refusal.ts';
import type { Files } from '../session/files.ts';
import type { Examined } from './examine.ts';
import { reasonOf } from './read-file.ts';
import { putBeside } from './beside.ts';

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
    const [digest = '', body = ''] = readFileSync(fileOf(folder, key), 'utf8').split(/\n(.*)/s);
    // A file that was cut, or that somebody else wrote, is no answer.
    const data: unknown = digest === digestOf(body) ? JSON.parse(body) : null;
    return new Map(Array.isArray(data) ? data.filter(isKept) : []);
  } catch {
    return new Map();
  }
}

/** Whole or not at all; null, or why they cannot be kept, which only makes the next run slower. */
export function saveAnswers(folder: string | null, key: string, answers: KeptAnswers): string | null {
  if (folder === null) return null;
  const body = JSON.stringify([...answers]);
  try {
    mkdirSync(folder, { recursive: true });
    putBeside(fileOf(folder, key), `${digestOf(body)}\n${body}`, 0o600);
    return null;
  } catch (error) {
    return reasonOf(error);
  }
}

function isKept(pair: unknown): pair is [string, KeptAnswer] {
  if (!Array.isArray(pair) || typeof pair[0] !== 'string') return false;
  const { text, uses, examined } = recordIn(pair[1]);
  const isPair = (use: unknown) => isTexts(use) && use.length === 2;
  return (
    typeof text === 'string' &&
    Array.isArray(uses) &&
    uses.every(isPair) &&
    isExamined(examined) &&
    examined.path === pair[0]
  );
}

/** Whether the data that was read has the form of an examined session. */
export function isExamined(value: unknown): value is Examined {
  const { path, counts, shortfalls, text, json, sarif, summary } = recordIn(value);
  return (
    typeof path === 'string' &&
    SEVERITIES.every((severity) => Number.isInteger(recordIn(counts)[severity])) &&
    isTexts(shortfalls) &&
    typeof text === 'string' &&
    typeof json === 'object' &&
    Array.isArray(sarif) &&
    typeof summary === 'object'
  );
}

const isTexts = (list: unknown): list is string[] =>
  Array.isArray(list) && list.every((one) => typeof one === 'string');
const recordIn = (value: unknown): Readonly<Record<string, unknown>> =>
  typeof value === 'object' && value !== null ? (value as Readonly<Record<string, unknown>>) : {};

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
