/** One session examined: just what the answer asked for needs, so that an archive never stands in memory whole. */
import { openDocument } from '../../grammar/document.ts';
import { attempted, isFault, type Fault } from '../../grammar/fault.ts';
import type { RequiredProof } from '../derive/trust/trust.ts';
import { classInWords } from '../derive/trust/words.ts';
import { faultMessage, faultSaying, PROGRAM_FAULT } from '../findings/program/fault.ts';
import { inspect, type Inspection } from '../inspect.ts';
import { findingsJson, type FindingsJson } from '../record/machine/findings-json.ts';
import { sarifOfFault, sarifResults } from '../record/machine/findings-sarif.ts';
import { shortfalls, verdictOf } from '../record/verdict.ts';
import type { Files } from '../session/files.ts';
import type { CheckFormat } from './check-answer.ts';
import { countsOf, findingsText, type SeverityCounts } from './check-text.ts';
import { shownPath } from './sessions.ts';
import { harmless } from './terminal-text.ts';

/** How the answer is to look, and what is asked of it. */
export interface View {
  /** A part holds what every format tells. */
  readonly format: CheckFormat | 'part';
  readonly colours: boolean;
  /** Hints are told one by one, and not only counted. */
  readonly hints: boolean;
  readonly width: number;
  readonly require: RequiredProof | null;
}

/** Plain data, which can pass between threads and be kept on disk. */
export interface Examined {
  readonly path: string;
  readonly counts: SeverityCounts;
  /** What falls short of the proof asked for. */
  readonly shortfalls: readonly string[];
  readonly text: string;
  readonly json: FindingsJson | null;
  readonly sarif: readonly object[];
  readonly summary: Summary | null;
}

/** For a row of a table. */
export interface Summary {
  /** What the day is worth, in words; null where there is none. */
  readonly day: string | null;
  readonly next: string | null;
}

/** What each answer is made of. */
const NEEDS: Readonly<Record<View['format'], readonly ('text' | 'json' | 'sarif' | 'summary')[]>> = {
  text: ['text'],
  json: ['json'],
  sarif: ['sarif'],
  annotations: ['json'],
  markdown: ['summary'],
  part: ['text', 'json', 'sarif', 'summary'],
};

/** What cannot even be told is one error, so that the other sessions of a folder are answered. */
export function examine(path: string, text: string, files: Files, view: View): Examined {
  const inspection = attempted(() => inspect(openDocument(path, text), files));
  return isFault(inspection) ? untold(path, inspection, view) : examined(path, inspection, view);
}

export function examined(path: string, inspection: Inspection, view: View): Examined {
  const told = attempted(() => toldOf(path, inspection, view));
  return isFault(told) ? untold(path, told, view) : told;
}

function toldOf(path: string, inspection: Inspection, view: View): Examined {
  const inspected = Object.assign(inspection, { path });
  const needs = NEEDS[view.format];
  return {
    path,
    counts: countsOf(inspected.findings),
    shortfalls: view.require ? shortfalls(inspected, view.require) : [],
    text: needs.includes('text') ? findingsText(inspected, view) : '',
    json: needs.includes('json') ? findingsJson(inspected) : null,
    sarif: needs.includes('sarif') ? sarifResults(inspected) : [],
    summary: needs.includes('summary') ? summaryOf(inspected) : null,
  };
}

function summaryOf(inspection: Inspection): Summary {
  const { day, next } = verdictOf(inspection);
  return { day: day && classInWords(day), next };
}

/** The answer on a session that the program failed over, made without the rooms that may have failed. */
export function untold(path: string, { fault }: Fault, { format, require }: View): Examined {
  const message = faultMessage(fault);
  const needs = NEEDS[format];
  const start = { line: 1, column: 1, endLine: 1, endColumn: 1 };
  const finding = {
    code: PROGRAM_FAULT,
    severity: 'error',
    ...faultSaying(fault),
    message,
    related: [],
    fixes: [],
    ...start,
  };
  const shown = harmless(shownPath(path));
  return {
    path,
    counts: { error: 1, warning: 0, information: 0, hint: 0 },
    shortfalls: require ? ['the day is not judged'] : [],
    text: needs.includes('text')
      ? `${shown}:1:1 error ${PROGRAM_FAULT}\n  ${harmless(message)}\n\n${shown}: 1 error\n`
      : '',
    json: needs.includes('json') ? { files: [{ path, findings: [finding] }] } : null,
    sarif: needs.includes('sarif') ? [sarifOfFault(path, message)] : [],
    summary: needs.includes('summary') ? { day: null, next: faultSaying(fault).action } : null,
  };
}
