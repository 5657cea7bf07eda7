/** Inspections: every text is answered, each finding stands inside its text, each fix keeps the law, each page is text. */
import fc from 'fast-check';
import { editDocument, openDocument } from '../../grammar/document.ts';
import { inspect, type Inspection } from '../../server/inspect.ts';
import { compareInspections } from '../../server/record/compare/compare.ts';
import { comparisonMarkdown, comparisonText } from '../../server/record/compare/text.ts';
import { findingsJson } from '../../server/record/machine/findings-json.ts';
import { sarifLog, sarifResults } from '../../server/record/machine/findings-sarif.ts';
import { checkPage, keyCardPage, valuesPage } from '../../server/record/card/pages.ts';
import { reportMarkdown } from '../../server/record/report/markdown.ts';
import { reportPage } from '../../server/record/report/report.ts';
import { sessionDrawings } from '../../server/record/drawings/session-drawings.ts';
import { valuesJson } from '../../server/record/machine/values-json.ts';
import { verdictOf } from '../../server/record/verdict.ts';
import { canonicalEntry } from '../../server/session/canonical.ts';
import { isRefusal } from '../../server/quantities/refusal.ts';
import { NO_FILES, type Files } from '../../server/session/files.ts';
import { sealOf } from '../../server/session/seal.ts';
import { offsetsOf } from '../../server/session/where.ts';
import { breach } from '../fixes.ts';
import { textAfter } from '../pages.ts';
import { said } from '../said.ts';
import { cleanSamples, filesOnDisk } from '../samples.ts';
import { harmed } from './bytes.ts';
import { wildLog, wildStream } from './evidence.ts';
import { longDay, placed, sessionText, stroke } from './sessions.ts';
import { law, same, target } from './target.ts';

const files = filesOnDisk();
/** Named as a sample, so that what it names is found. */
const inspected = (text: string) => inspect(openDocument('samples/broken/mangled.trib', text), files);

/** What a value that is none says on a page; "is not a number" is what people say of what was typed. */
const HOLED = /undefined|NaN|\[object|(?<!\bis\s+)not a number/;

/** Each finding has a sentence, and its places and those of its fixes lie inside the texts that they are about. */
export function answered({ session, findings }: Inspection, text: string): void {
  for (const { code, message, place, related, fixes } of findings) {
    law(message.length > 10, `${code} says nothing`);
    law(code !== 'program/fault', message);
    law(message.length < 4000, `${code} says more than anybody reads`);
    if (!/\de[+-]?\d/i.test(text))
      law(!/\d[eE][+-]?\d/.test(message), `${code} prints an exponent: ${message}`);
    if (!text.includes('..')) law(!/[^.]\.\.(?:\s|$)/.test(message), `${code} ends twice: ${message}`);
    if (!/undefined|NaN|null|object/.test(text))
      law(!HOLED.test(message) && !message.includes('null'), `${code} says ${message}`);
    const places = [place, ...related.map((other) => other.place)];
    for (const fix of fixes) places.push(...fix.edits.map((edit) => edit.place));
    for (const where of places) {
      const offsets = offsetsOf(session, where);
      const length = session.documents.get(where.path)?.text.length ?? -1;
      law(
        offsets !== null && 0 <= offsets.start && offsets.start <= offsets.end && offsets.end <= length,
        `${code} stands outside its text`,
      );
      law(where.end <= where.entry.text.length, `${code} stands outside its entry`);
    }
  }
}

const findings = target('findings', 60, sessionText, (text) => answered(inspected(text), text));

const fixes = target('fixes', 40, fc.tuple(sessionText, fc.nat()), ([text, choice]) => {
  const inspection = inspected(text);
  const offered = inspection.findings.flatMap((finding) => finding.fixes);
  for (const fix of offered) {
    const broken = breach(inspection, fix);
    law(broken === null, `the fix "${fix.title}" writes a fact: ${broken ?? ''}`);
  }
  const fix = offered[choice % Math.max(1, offered.length)];
  const fixed = fix && textAfter(inspection, fix);
  if (fixed === undefined || fixed === null) return;
  law(fixed !== text, `the fix "${fix?.title ?? ''}" changes nothing`);
  answered(inspected(fixed), fixed);
});

const afterEdits = target(
  'findings after edits',
  20,
  fc.tuple(fc.oneof(sessionText, longDay), fc.array(stroke, { minLength: 1, maxLength: 5 })),
  ([text, strokes]) => {
    let document = openDocument('day.trib', text);
    const own = { ...NO_FILES };
    said(document, own);
    for (const one of strokes) {
      const { start, end, put } = placed(one, document.text);
      document = editDocument(document, start, end, put);
      const fresh = said(openDocument('day.trib', document.text), { ...NO_FILES });
      same(said(document, own), fresh, 'edits leave other findings');
    }
  },
);

const records = target('records', 25, fc.tuple(sessionText, sessionText), ([text, other]) => {
  const inspection = inspected(text);
  const report = reportPage([inspection]);
  const drawn = sessionDrawings(inspection, 680).drawings.map(({ svg }) => svg);
  for (const markup of [report, ...drawn]) {
    law(!/<img|<script[^>]*src|<iframe|<object|<embed|<link/i.test(markup), 'a text became markup');
    law(!/\s(?:src|xlink:href|action)="?(?:https?:)?\/\//i.test(markup), 'a page fetches something');
  }
  const pages = [keyCardPage(inspection), checkPage(inspection), valuesPage(inspection)];
  const printed = [...pages, reportMarkdown([inspection]), verdictOf(inspection).sentence ?? ''];
  const compared = compareInspections(inspection, inspected(other));
  printed.push(comparisonText('x', compared), comparisonMarkdown('x', compared));
  const answers = [
    findingsJson(inspection),
    valuesJson([inspection]),
    sarifLog(sarifResults(inspection), '0'),
  ];
  printed.push(...answers.map((answer) => JSON.stringify(answer)));
  if (!/undefined|NaN|object/.test(text + other)) saysWords(printed);
});

function saysWords(pages: readonly string[]): void {
  for (const page of pages) law(!HOLED.test(page), `a page says ${near(page)}`);
}

function near(page: string): string {
  const at = page.search(HOLED);
  return page.slice(Math.max(0, at - 120), at + 60);
}

/** Each file that a good day names, with what it holds. */
const named = new Map<string, { file: string; text: string; bytes: Uint8Array }>();
for (const { file, text } of cleanSamples())
  inspect(openDocument(file, text), {
    ...files,
    bytes: (path) => {
      const bytes = files.bytes(path);
      if (!isRefusal(bytes)) named.set(path, { file, text, bytes });
      return bytes;
    },
  });
/** Recordings are harmed behind their checksums as well, else most of the harm would be noticed at the door. */
const harmedFile = fc.constantFrom(...named).chain(([path, one]) => {
  const behind = path.endsWith('.nmea') ? [wildLog] : path.endsWith('.rtcm3') ? [wildStream] : [];
  return fc.oneof(harmed([one.bytes]), ...behind).map((bytes) => ({ ...one, path, bytes }));
});
const namedFiles = target('files that a session names', 30, harmedFile, ({ file, text, path, bytes }) => {
  const harmedFiles: Files = { ...files, bytes: (asked) => (asked === path ? bytes : files.bytes(asked)) };
  const inspection = inspect(openDocument(file, text), harmedFiles);
  answered(inspection, text);
  const pages = [keyCardPage(inspection), checkPage(inspection), valuesPage(inspection)];
  const drawn = sessionDrawings(inspection, 680).drawings.map(({ svg }) => svg);
  if (!/undefined|NaN|object/.test(Buffer.from(bytes).toString('latin1')))
    saysWords([...pages, ...drawn, reportPage([inspection]), JSON.stringify(findingsJson(inspection))]);
});

/** Blanks, comments and line ends are no part of a seal; everything else is. */
const seals = target('seals', 25, fc.tuple(sessionText, stroke), ([text, one]) => {
  const { start, end, put } = placed(one, text);
  const before = openDocument('samples/broken/mangled.trib', text);
  const after = openDocument('samples/broken/mangled.trib', text.slice(0, start) + put + text.slice(end));
  const seal = (document: typeof before) => sealOf(inspect(document, files).session, files);
  const meaning = (document: typeof before) => document.entries.map(canonicalEntry).join('\n');
  const [sealed, changed] = [seal(before), seal(after)];
  same(seal(before), sealed, 'a seal is not the same twice');
  if ('whole' in sealed && 'whole' in changed && sealed.whole === changed.whole)
    same(
      withoutReviews(meaning(after)),
      withoutReviews(meaning(before)),
      'a change leaves the seal as it is',
    );
});
/** A review is no part of what it seals, nor is an entry that says nothing. */
const withoutReviews = (meaning: string) =>
  meaning
    .split('\n')
    .filter((entry) => !/^\[\["review"|^\[\[null\]\]$/.test(entry))
    .join('\n');

export const INSPECTION = [findings, fixes, afterEdits, records, namedFiles, seals];
