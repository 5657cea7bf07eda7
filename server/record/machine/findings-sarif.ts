/** Findings in the Static Analysis Results Interchange Format (OASIS SARIF 2.1.0), for continuous integration. */
import type { Place } from '../../../grammar/tree.ts';
import { CATALOGUE } from '../../findings/catalogue.ts';
import { PROGRAM_FAULT } from '../../findings/program/fault.ts';
import type { Finding, Fix, Severity } from '../../findings/finding.ts';
import type { Inspection } from '../../inspect.ts';
import type { Session } from '../../session/session.ts';
import { whereIs } from '../../session/where.ts';

/** The findings of one session, for a log that may hold those of many. */
export const sarifResults = ({ session, findings }: Inspection): object[] =>
  findings.map((finding) => result(session, finding));

/** One run over all sessions; lines and columns count from 1, columns in UTF-16 units. */
export function sarifLog(results: readonly object[], version: string): object {
  return {
    $schema: 'https://docs.oasis-open.org/sarif/sarif/v2.1.0/errata01/os/schemas/sarif-schema-2.1.0.json',
    version: '2.1.0',
    runs: [
      {
        tool: { driver: { name: 'tribrach', version, rules: CATALOGUE.map(({ code }) => ({ id: code })) } },
        columnKind: 'utf16CodeUnits',
        results,
      },
    ],
  };
}

/** SARIF has no fourth level; what a surveyor may leave as it is counts as a note. */
const LEVELS: Readonly<Record<Severity, string>> = {
  error: 'error',
  warning: 'warning',
  information: 'note',
  hint: 'note',
};

function result(session: Session, finding: Finding): object {
  const related = finding.related.map(({ headline, place }, index) => ({
    id: index,
    message: { text: plain(headline) },
    ...located(session, place),
  }));
  return {
    ruleId: finding.code,
    ruleIndex: CATALOGUE.findIndex(({ code }) => code === finding.code),
    level: LEVELS[finding.severity],
    // Its first sentence is the headline, which is what a list of results shows.
    message: { text: plain(finding.message) },
    properties: { headline: finding.headline, effect: finding.effect, action: finding.action },
    locations: [located(session, finding.place)],
    ...(related.length > 0 ? { relatedLocations: related } : {}),
    ...(finding.fixes.length > 0 ? { fixes: finding.fixes.map((fix) => fixed(session, fix)) } : {}),
  };
}

/** Of a file of which nothing else can be told. */
export const sarifOfFault = (path: string, message: string): object => ({
  ruleId: PROGRAM_FAULT,
  ruleIndex: CATALOGUE.findIndex(({ code }) => code === PROGRAM_FAULT),
  level: LEVELS.error,
  message: { text: plain(message) },
  locations: [
    {
      physicalLocation: { artifactLocation: { uri: uriOf(path) }, region: { startLine: 1, startColumn: 1 } },
    },
  ],
});

const located = (session: Session, place: Place) => ({
  physicalLocation: { artifactLocation: { uri: uriOf(place.path) }, region: regionOf(session, place) },
});

function regionOf(session: Session, place: Place) {
  const { line, column, endLine, endColumn } = whereIs(session, place);
  return { startLine: line, startColumn: column, endLine, endColumn };
}

function fixed(session: Session, fix: Fix): object {
  const byPath = new Map<string, Fix['edits'][number][]>();
  for (const edit of fix.edits) byPath.set(edit.place.path, [...(byPath.get(edit.place.path) ?? []), edit]);
  return {
    description: { text: fix.title },
    artifactChanges: [...byPath].map(([path, edits]) => ({
      artifactLocation: { uri: uriOf(path) },
      replacements: edits.map(({ place, text }) => ({
        deletedRegion: regionOf(session, place),
        insertedContent: { text },
      })),
    })),
  };
}

/** In a message, words in brackets before an address in parentheses are a link (§3.11.6); nothing that was typed is one. */
const plain = (text: string) => text.replace(/[[\]\\]/g, '\\$&');

/** A relative path as a URI reference; a drive letter or a colon in a name must not look like a scheme. */
function uriOf(path: string): string {
  const uri = path.split('/').map(encodeURIComponent).join('/');
  return uri === '-' ? 'stdin' : uri;
}
