/** The page of a finding, taken apart: its code, and its sessions as they stand between the fences. */
import { readdirSync, readFileSync } from 'node:fs';
import { openDocument } from '../grammar/document.ts';
import type { Fix } from '../server/findings/finding.ts';
import { inspect, type Inspection } from '../server/inspect.ts';
import { offsetsOf } from '../server/session/where.ts';
import { filesOnDisk } from './samples.ts';
import { findingMarkers, withMarkers, withoutMarkers } from './markers.ts';

export const PAGES = 'server/findings';

/** `given` is put before the snippets below it, up to the next `given`, so that a page need not repeat itself. */
export const ROLES = ['given', 'wrong', 'right', 'mended'] as const;
export type Role = (typeof ROLES)[number];

export interface Snippet {
  /** What stands behind `tribrach` at the fence. */
  readonly role: string;
  /** As it stands on the page, with its markers. */
  readonly text: string;
  readonly given: string;
  /** Where the text starts and ends on the page. */
  readonly start: number;
  readonly end: number;
}
export interface Page {
  readonly file: string;
  readonly text: string;
  /** What the title says. */
  readonly code: string;
  readonly snippets: readonly Snippet[];
}

export const allPages = (): Page[] =>
  readdirSync(PAGES, { recursive: true, encoding: 'utf8' })
    .map((file) => file.replaceAll('\\', '/'))
    .filter((file) => file.endsWith('.md'))
    .sort()
    .map((file) => pageOf(`${PAGES}/${file}`, readFileSync(`${PAGES}/${file}`, 'utf8')));

export function pageOf(file: string, text: string): Page {
  const snippets: Snippet[] = [];
  let given = '';
  for (const fence of text.matchAll(/^```tribrach(.*)\n([^]*?)^```$/gm)) {
    const role = (fence[1] ?? '').trim();
    const inner = fence[2] ?? '';
    const start = fence.index + fence[0].indexOf('\n') + 1;
    snippets.push({ role, text: inner, given, start, end: start + inner.length });
    if (role === 'given') given = inner;
  }
  return { file, text, code: /^# (\S+)\n/.exec(text)?.[1] ?? '', snippets };
}

/** What is found in a snippet together with what is given before it. */
export const inspectSnippet = ({ given, text }: Pick<Snippet, 'given' | 'text'>): Inspection =>
  inspectText(given + withoutMarkers(text));

/** A page's session finds the recordings of the samples beside it, and what broken samples use, and no other file. */
export const inspectText = (text: string): Inspection =>
  inspect(openDocument('session.trib', text), {
    document: (path) => onDisk.document(`samples/broken/used/${path}`),
    bytes: (path) => onDisk.bytes(`samples/recordings/${path}`),
  });
const onDisk = filesOnDisk();

/** The snippet as it should be written: with a marker for each finding, those in what is given at its first line. */
export function markedSnippet(snippet: Snippet, code: string): string {
  const inspection = inspectSnippet(snippet);
  const ahead = linesIn(snippet.given);
  const markers = findingMarkers(withoutReminders(inspection, code))
    .filter((marker) => marker.line > ahead)
    .map((marker) => ({ ...marker, line: marker.line - ahead }));
  return withMarkers(withoutMarkers(snippet.text), markers);
}

/** A page speaks of its own reminder only: the one about hazards would stand under every session that is cut short. */
export function withoutReminders(inspection: Inspection, code: string): Inspection {
  const findings = inspection.findings.filter(
    (finding) => finding.code === code || !isReminder(finding.code),
  );
  return { ...inspection, findings };
}
const isReminder = (code: string) => code === 'site/no-hazards';

/** Null where an edit lies outside the session's own file. */
export function textAfter({ session }: Inspection, fix: Fix): string | null {
  let { text } = session.document;
  const edits = fix.edits.map((edit) => ({ edit, at: offsetsOf(session, edit.place) }));
  for (const { edit, at } of edits.sort((one, other) => (other.at?.start ?? 0) - (one.at?.start ?? 0))) {
    if (!at || at.path !== session.document.path) return null;
    text = text.slice(0, at.start) + edit.text + text.slice(at.end);
  }
  return text;
}

export const linesIn = (text: string) => text.split('\n').length - 1;

/** The file that carries what the pages say into the program, as it should be written. */
export const EXPLANATIONS = 'server/findings/explanations.ts';

export function explanationsFrom(pages: readonly Page[]): string {
  const rows = pages.map((page) => {
    const { means, hurts, remedy } = explainedOn(page);
    const lines = Object.entries({ means, hurts, remedy }).map(([key, said]) => {
      const line = `    ${key}: ${quoted(said)},`;
      return `${line.length > LINE_WIDTH ? `    ${key}:\n      ${quoted(said)},` : line}\n`;
    });
    return `  '${page.code}': {\n${lines.join('')}  },\n`;
  });
  return `${EXPLANATIONS_HEAD}${rows.join('')}};\n`;
}

/** Of the formatter. */
const LINE_WIDTH = 110;

const EXPLANATIONS_HEAD = `/** What each code means, why it hurts and what to do: the first paragraphs of its page; written by \`npm run bless\`. */

export interface Explanation {
  readonly means: string;
  readonly hurts: string;
  readonly remedy: string;
}

export const EXPLANATIONS: Readonly<Record<string, Explanation>> = {
`;

/** As the formatter wants it: in double quotes where it holds single ones and no double ones. */
function quoted(text: string): string {
  const marks = (sign: string) => text.split(sign).length - 1;
  return marks("'") > marks('"')
    ? `"${text.replaceAll('\\', '\\\\').replaceAll('"', '\\"')}"`
    : `'${text.replaceAll('\\', '\\\\').replaceAll("'", "\\'")}'`;
}

export function explainedOn({ text }: Page): { means: string; hurts: string; remedy: string } {
  const paragraphs = text.split('\n\n').map((paragraph) => paragraph.trim().replace(/\s*\n\s*/g, ' '));
  const behind = (label: string) =>
    paragraphs
      .find((paragraph) => paragraph.startsWith(label))
      ?.slice(label.length)
      .trim() ?? '';
  return {
    means: paragraphs[1] ?? '',
    hurts: behind('**Why it hurts.**'),
    remedy: behind('**What to do.**'),
  };
}
