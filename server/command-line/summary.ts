/** The sessions of a run as one table in Markdown, for the page that a service keeps of it: what needs a look comes first. */
import { SEVERITIES } from '../findings/finding.ts';
import { countsInWords, totalText } from './check-text.ts';
import type { Examined } from './examine.ts';
import { shownPath } from './sessions.ts';
import { counted } from './terminal-text.ts';

/** Longer tables are cut off by the services that show them; what is left out is counted. */
const MOST_ROWS = 200;

export function summaryMarkdown(examined: readonly Examined[]): string {
  const rows = examined
    .map((session, index) => ({ session, weight: weightOf(session), index }))
    .sort((one, other) => one.weight - other.weight || one.index - other.index)
    .map(({ session }) => rowOf(session));
  const left = rows.length - MOST_ROWS;
  return [
    '| session | day | found | next |',
    '|---|---|---|---|',
    ...rows.slice(0, MOST_ROWS),
    '',
    ...(left > 0 ? [`${counted(left, 'more session')} not listed; nothing in them is worse.`, ''] : []),
    `${totalText(examined.map(({ counts }) => counts))}`,
    '',
  ].join('\n');
}

/** By the worst that was found in it, what falls short before what is proved; the order of the paths among equals. */
function weightOf({ counts, shortfalls }: Examined): number {
  const worst = SEVERITIES.findIndex((severity) => counts[severity] > 0);
  return 2 * (worst < 0 ? SEVERITIES.length : worst) - (shortfalls.length > 0 ? 1 : 0);
}

function rowOf({ path, counts, summary }: Examined): string {
  const cells = [shownPath(path), summary?.day ?? '', countsInWords(counts), summary?.next ?? ''];
  return `| ${cells.map(cell).join(' | ')} |`;
}

/** A name from a file must make no other cell, link, picture or tag. */
const cell = (text: string) =>
  text.replace(/\s+/g, ' ').replace(/[\\`*_{}[\]<>|#!&~@]/g, (sign) => `&#${sign.charCodeAt(0)};`);
