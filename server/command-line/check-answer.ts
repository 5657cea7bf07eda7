/** What `check` prints of examined sessions and how it ends, whether one run examined them or the parts of several are joined. */
import manifest from '../../package.json' with { type: 'json' };
import type { RequiredProof } from '../derive/trust/trust.ts';
import { SEVERITIES, type Severity } from '../findings/finding.ts';
import { annotations } from '../record/machine/annotations.ts';
import { mergedFindings } from '../record/machine/findings-json.ts';
import { sarifLog } from '../record/machine/findings-sarif.ts';
import { totalText } from './check-text.ts';
import type { Examined } from './examine.ts';
import type { Io } from './io.ts';
import { shownPath } from './sessions.ts';
import { summaryMarkdown } from './summary.ts';

const merged = (examined: readonly Examined[]) => mergedFindings(examined.flatMap(({ json }) => json ?? []));
const written = (data: object) => `${JSON.stringify(data, null, 2)}\n`;

const ANSWERS = {
  text: (examined: readonly Examined[]) =>
    examined.map(({ text }) => text).join('\n') +
    (examined.length > 1 ? `\n${totalText(examined.map(({ counts }) => counts))}\n` : ''),
  json: (examined: readonly Examined[]) => written(merged(examined)),
  sarif: (examined: readonly Examined[]) =>
    written(
      sarifLog(
        examined.flatMap(({ sarif }) => sarif),
        manifest.version,
      ),
    ),
  annotations: (examined: readonly Examined[]) => annotations(merged(examined)),
  markdown: summaryMarkdown,
} satisfies Record<string, (examined: readonly Examined[]) => string>;

export type CheckFormat = keyof typeof ANSWERS;
export const CHECK_FORMATS = Object.keys(ANSWERS) as readonly CheckFormat[];

/** What a session's findings and proof are held against. */
export interface Demands {
  /** Exit status 1 for findings of this severity or a higher one. */
  readonly severity: Severity;
  readonly require: RequiredProof | null;
}

export function answer(
  examined: readonly Examined[],
  format: CheckFormat,
  { severity, require }: Demands,
  io: Io,
): void {
  io.print(ANSWERS[format](examined), format === 'json' || format === 'sarif' ? 'json' : 'text');
  const counted = SEVERITIES.slice(0, SEVERITIES.indexOf(severity) + 1);
  if (examined.some(({ counts }) => counted.some((one) => counts[one] > 0))) io.exitWith(1);
  const missing = examined.flatMap(({ path, shortfalls }) =>
    shortfalls.map((shortfall) => `${shownPath(path)}: ${shortfall}, and ${require ?? ''} is required`),
  );
  if (missing.length > 0) io.exitWith(1);
  io.complain(missing.map((sentence) => `tribrach: ${sentence}\n`).join(''));
}
