/** The short report for a pull request: verdict, checks, findings, and what was keyed against what should have been. */
import { attempted, isFault } from '../../../grammar/fault.ts';
import { faultMessage } from '../../findings/program/fault.ts';
import { clockTime } from '../../findings/words.ts';
import type { Inspection } from '../../inspect.ts';
import { isHole, type Maybe, type Value } from '../../quantities/value.ts';
import { whereIs } from '../../session/where.ts';
import { harmless } from '../drawings/markup.ts';
import { signed } from '../drawings/residuals.ts';
import { against } from './checks.ts';
import { keyedRows } from './keyed.ts';
import { signInWords, titleOf } from './verdict.ts';
import { verdictOf } from '../verdict.ts';

export const reportMarkdown = (inspections: readonly Inspection[]): string =>
  inspections.map(guardedMarkdown).join('\n---\n\n');

function guardedMarkdown(inspection: Inspection): string {
  const part = attempted(() => sessionMarkdown(inspection));
  return isFault(part)
    ? `## ${plain(inspection.session.document.path)}\n\n${plain(faultMessage(part.fault))}\n`
    : part;
}

function sessionMarkdown(inspection: Inspection): string {
  const { sentence, next } = verdictOf(inspection);
  const blocks = [
    `## ${plain(titleOf(inspection))}`,
    `**${signInWords(inspection)}.** ${plain(sentence ?? 'No base is set up in this session, so there is nothing to prove.')}`,
    next ? `**Next:** ${plain(next)}` : '',
    checkTable(inspection),
    findingList(inspection),
    ...keyedTables(inspection),
  ].filter((block) => block !== '');
  return `${blocks.join('\n\n')}\n`;
}

function checkTable(inspection: Inspection): string {
  const { checks } = inspection.derivation;
  if (checks.length === 0) return 'No known mark was occupied.';
  const size = (value: Maybe<Value>, limit: Maybe<Value>, sign: boolean) => {
    if (isHole(value)) return 'not known';
    if (isHole(limit)) return signed(value.value, sign);
    const [shown, of] = against(value.value, limit.value, sign);
    return `${shown} of ${of}`;
  };
  return tableOf(
    ['Check', 'On', 'At', 'Horizontal', 'Up', 'Verdict'],
    checks.map(({ check, instant, residual, tolerance, verdict }) => [
      check.name,
      check.on?.name ?? 'no mark',
      clockTime(instant, inspection) ?? '',
      size(residual.horizontal, tolerance.horizontal, false),
      size(residual.up, tolerance.up, true),
      verdict,
    ]),
  );
}

function findingList({ findings, session }: Inspection): string {
  if (findings.length === 0) return 'Nothing is found wrong.';
  return findings
    .map(({ severity, code, message, place, related }) => {
      const { path, line } = whereIs(session, place);
      const where = path === session.document.path ? `line ${line}` : `line ${line} of ${path}`;
      const more = related.length > 0 ? ` (and ${related.length} more that follow)` : '';
      return `- **${severity}** ${plain(code)}, ${plain(where)}: ${plain(message)}${more}`;
    })
    .join('\n');
}

function keyedTables({ derivation }: Inspection): string[] {
  return [...derivation.setups.values()].flatMap((values) => {
    const keyed = values.keyed.at(-1);
    if (!keyed) return [];
    const rows = keyedRows(values, keyed).map(({ field, should, told, off }) => [
      field,
      cell(should),
      cell(told),
      off === null ? '' : isHole(off) ? 'not known' : off.right ? 'right' : `**${off.text}**`,
    ]);
    return [
      `Setup ${plain(values.setup.name)}${values.keyed.length > 1 ? ', as keyed last' : ''}\n\n${tableOf(
        ['Field', 'Should be', 'Keyed', 'Keyed is'],
        rows,
        3,
      )}`,
    ];
  });
}

const cell = (shown: Maybe<{ readonly text: string }> | null) =>
  shown === null ? '' : isHole(shown) ? 'not known' : shown.text;

/** @param raw the column that brings markup of our own */
function tableOf(heads: readonly string[], rows: readonly (readonly string[])[], raw = -1): string {
  const line = (cells: readonly string[]) => `| ${cells.join(' | ')} |`;
  return [
    line(heads),
    line(heads.map(() => '---')),
    ...rows.map((cells) => line(cells.map((text, index) => (index === raw ? text : plain(text))))),
  ].join('\n');
}

/**
 * Text of a session never becomes markup, a link or a mention in somebody's pull request.
 * Characters that mean something to Markdown, wherever they stand, are written as references; others only where they begin a line or a link.
 */
export const plain = (text: string): string =>
  harmless(text)
    .replace(/\s+/g, ' ')
    .trim()
    .replace(/[\\`*_~[\]<>|#!&@]|:(?=\/)|(?<=\bwww)\.|^[-+=:(]|^\d+(?=[.)])/gi, (found) =>
      [...found].map((character) => `&#${character.charCodeAt(0)};`).join(''),
    );
