/** One session examined: just what the answer asked for needs, so that an archive never stands in memory whole. */
import { openDocument } from '../../grammar/document.ts';
import type { RequiredProof } from '../derive/trust/trust.ts';
import { inspect, type Inspection } from '../inspect.ts';
import { findingsJson, type FindingsJson } from '../record/machine/findings-json.ts';
import { sarifResults } from '../record/machine/findings-sarif.ts';
import { shortfalls } from '../record/verdict.ts';
import type { Files } from '../session/files.ts';
import { countsOf, findingsText, type SeverityCounts } from './check-text.ts';

/** How the answer is to look, and what is asked of it. */
export interface View {
  readonly format: 'text' | 'json' | 'sarif';
  readonly colours: boolean;
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
}

export function examine(path: string, text: string, files: Files, view: View): Examined {
  return examined(path, inspect(openDocument(path, text), files), view);
}

export function examined(path: string, inspection: Inspection, view: View): Examined {
  const inspected = Object.assign(inspection, { path });
  return {
    path,
    counts: countsOf(inspected.findings),
    shortfalls: view.require ? shortfalls(inspected, view.require) : [],
    text: view.format === 'text' ? findingsText(inspected, view) : '',
    json: view.format === 'json' ? findingsJson(inspected) : null,
    sarif: view.format === 'sarif' ? sarifResults(inspected) : [],
  };
}
