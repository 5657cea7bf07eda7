/** The parts of a report after its results: link, points, findings, assumptions, derivations, sources, cautions, reviews, and the text itself. */
import { listLinks, listValues } from '../../derive/listing.ts';
import type { StreamValues } from '../../derive/link/stream.ts';
import { pointCounts } from '../../derive/repair/points-counts.ts';
import { POINT_CLASSES, pointClassInWords, type PointClass } from '../../derive/repair/flaws.ts';
import { trustOf } from '../../derive/trust/trust.ts';
import type { Finding } from '../../findings/finding.ts';
import { belowHeadline } from '../../findings/saying.ts';
import { clockTime } from '../../findings/words.ts';
import { sizeOf } from '../../derive/checks/budget.ts';
import { REST_OF_SHARES } from '../../derive/checks/right-check.ts';
import { leavesOf } from '../../quantities/computed.ts';
import { explain } from '../../quantities/explain.ts';
import { showLength, showNumber, showSigma, showValue } from '../../quantities/show.ts';
import { isHole, type Leaf, type Maybe, type Value } from '../../quantities/value.ts';
import type { Radio } from '../../session/entries.ts';
import { instantOf } from '../../session/session.ts';
import { licenceReminders } from '../../features/licence-reminder.ts';
import { linkLoad } from '../drawings/link-load.ts';
import { element, group, type Child, type Markup } from '../drawings/markup.ts';
import { CAUTIONS } from '../card/key-card.ts';
import {
  facts,
  figure,
  lineAnchor,
  lineLink,
  MOST_LINES,
  section,
  shown,
  table,
  type Chapter,
} from './chapter.ts';
import { tellPlace } from '../../session/where.ts';

export function linkSection(chapter: Chapter): Markup | null {
  const { session, derivation } = chapter.inspection;
  const { radios, streams } = session;
  if (radios.size === 0 && streams.length === 0) return null;
  const ends = [...radios.values()];
  const rows = RADIO_FIELDS.map(([name, of]): Child[] => [
    name,
    ...ends.map((radio) => of(radio) ?? '–'),
  ]).filter((cells) => cells.slice(1).some((cell) => cell !== '–'));
  return section(
    'Link',
    ends.length > 0
      ? table([{ head: 'Setting' }, ...ends.map(({ name }) => ({ head: `radio ${name}` }))], rows)
      : null,
    ...derivation.link.streams.flatMap((stream) => [
      streamTable(chapter, stream),
      stream.load
        ? figure(
            chapter,
            (canvas) => linkLoad(chapter.inspection, stream, canvas),
            'What each message takes of each second on the air.',
          )
        : null,
    ]),
    reachTable(chapter),
    element(
      'p',
      { class: 'small quiet' },
      `${licenceReminders(derivation.link).join(' ')} Frequencies, powers and licences are a matter of local rules; nothing here says that a setting is permitted.`.trim(),
    ),
  );
}

/** What a base sends, and what all of it asks of the radio. */
function streamTable(chapter: Chapter, stream: StreamValues): Markup {
  const { messages, stream: written } = stream;
  const tracked = written.tracked.map(
    ({ system, satellites }) => `${system} ${isHole(satellites) ? '?' : plain(satellites)}`,
  );
  const share = (value: Value) => `${showNumber(value.value * 100, 0)} %`;
  const seconds = (value: Value) => `${plain(value)} s`;
  return group(
    table(
      [
        { head: 'Message' },
        { head: 'Every', right: true },
        { head: 'Size', right: true },
        { head: 'Oldest at the rover', right: true },
      ],
      messages.map(({ message, size, age }) => [
        message.number.name,
        shown(chapter, message.every, seconds),
        shown(chapter, size, (value) => `${showNumber(value.value, 0)} bytes`),
        shown(chapter, age, (value) => `${showNumber(value.value, 1)} s`),
      ]),
      {
        caption: [
          `Stream from ${stream.name}${tracked.length > 0 ? `, tracking ${tracked.join(', ')}` : ''}, `,
          lineLink(chapter, written.place),
        ],
      },
    ),
    facts([
      ['Time on the air, average', shown(chapter, stream.averageAirtime, share)],
      ['In the fullest second', shown(chapter, stream.fullestSecond, share)],
      ['The same, staggered', shown(chapter, stream.staggeredSecond, share)],
      ['Oldest corrections', shown(chapter, stream.worstAge, (value) => `${showNumber(value.value, 1)} s`)],
    ]),
  );
}

/** Range and margin, as far as the notes allow. */
function reachTable(chapter: Chapter): Markup | null {
  const rows = listLinks(chapter.inspection.derivation.link)
    .flat()
    .filter(({ id }) => id.startsWith('link/'))
    .flatMap(({ value }): Child[][] =>
      isHole(value) ? [] : [[sentence(value.name), shown(chapter, value, linkValue)]],
    );
  return rows.length === 0 ? null : table([{ head: 'Range' }, { head: 'Value', right: true }], rows);
}

const linkValue = (value: Value) =>
  value.unit === 'm'
    ? showLength(value.value)
    : value.unit === ''
      ? showNumber(value.value, 2)
      : showValue(value);

const typed = (value: Maybe<Value> | null): string | null =>
  value === null ? null : isHole(value) ? '?' : value.origin === 'given' ? value.typed : plain(value);
const plain = ({ value }: Value) => showNumber(value, 6).replace(/\.?0+$/, '');

const RADIO_FIELDS: readonly (readonly [string, (radio: Radio) => string | null])[] = [
  ['Carrier', ({ carrier }) => typed(carrier)],
  ['Channel', ({ channel }) => typed(channel)],
  ['Rate', ({ rate }) => typed(rate)],
  ['Spreading', ({ spreading }) => spreading?.name ?? null],
  ['Bandwidth', ({ bandwidth }) => typed(bandwidth)],
  ['Coding', ({ coding }) => coding?.name ?? null],
  ['Power', ({ power }) => typed(power)],
  ['Aerial', ({ aerial }) => typed(aerial)],
  ['Clearance', ({ clearance }) => typed(clearance)],
  ['Licence', ({ licence }) => licence?.text ?? null],
];

/** How many points stand in each class, set by set. */
export function pointsSection(chapter: Chapter): Markup | null {
  const { session, derivation } = chapter.inspection;
  if (derivation.points.length === 0) return null;
  const trust = trustOf(session, derivation);
  const counts = derivation.points.map((set) => pointCounts(set, session, derivation, trust));
  const single = counts.filter(({ set }) => set.kind === 'point');
  const sets = counts.filter(({ set }) => set.kind !== 'point');
  const used = POINT_CLASSES.filter((found) => counts.some(({ classes }) => classes[found] > 0));
  const row = (name: Child, classes: (found: PointClass) => number, total: number): Child[] => [
    name,
    ...used.map((found) => String(classes(found))),
    String(total),
  ];
  const rows = sets
    .filter(({ refused }) => refused === null)
    .map(({ set, classes, total }) =>
      row([set.name, ', ', lineLink(chapter, set.entry.place)], (found) => classes[found], total),
    );
  const ofSingle = (found: PointClass) => single.reduce((sum, { classes }) => sum + classes[found], 0);
  const undated = counts.reduce((sum, { withoutTime }) => sum + withoutTime, 0);
  return section(
    'Points',
    rows.length + single.length === 0
      ? null
      : table(
          [
            { head: 'Points' },
            ...used.map((found) => ({ head: pointClassInWords(found), right: true })),
            { head: 'in all', right: true },
          ],
          [...rows, ...(single.length > 0 ? [row('one by one', ofSingle, single.length)] : [])],
        ),
    ...sets.flatMap(({ set, refused }) =>
      refused === null ? [] : [element('p', {}, `${set.name} cannot be read: ${refused}.`)],
    ),
    undated > 0
      ? element(
          'p',
          { class: 'small' },
          `${undated} without a time; each takes the worst class that it could have.`,
        )
      : null,
  );
}

export function findingsSection(chapter: Chapter): Markup {
  const { findings } = chapter.inspection;
  return section(
    'Findings',
    findings.length === 0
      ? element('p', {}, 'Nothing is found wrong.')
      : findings.map((finding) => findingBlock(chapter, finding)),
  );
}

function findingBlock(chapter: Chapter, finding: Finding): Markup {
  const { severity, code, headline, place, related, fixes } = finding;
  const below = belowHeadline(finding);
  return element(
    'div',
    { class: `finding ${severity}` },
    element('p', { class: 'about' }, element('b', {}, severity), ` ${code}, `, lineLink(chapter, place)),
    element('p', {}, element('b', {}, headline)),
    below === '' ? null : element('p', {}, below),
    related.length === 0 && fixes.length === 0
      ? null
      : element(
          'ul',
          {},
          ...related.map((one) => element('li', {}, one.headline, ' (', lineLink(chapter, one.place), ')')),
          ...fixes.map(({ title }) => element('li', {}, `Possible fix: ${title}`)),
        ),
  );
}

/** Everything that nobody typed and that a result rests on, by the reason that is given for it. */
export function assumptionsSection(chapter: Chapter): Markup {
  const reasons = new Map<string, Set<string>>();
  const leaves = allLeaves(chapter);
  const spread = new Set([...leaves].filter(({ sigma }) => sigma).map(({ name }) => name));
  for (const leaf of leaves) {
    const reason = assumedIn(leaf);
    // What a number adds to a budget is told of that number, which may have been stated and not assumed.
    const isShare = leaf.sigma === 0 && spread.has(leaf.name);
    const isNoted = sizeOf(leaf)?.origin === 'given';
    if (reason === null || isShare || isNoted || leaf.name === REST_OF_SHARES) continue;
    const what = leaf.origin === 'assumed' ? `${leaf.name} ${assumedValue(leaf)}` : leaf.name;
    reasons.set(reason, (reasons.get(reason) ?? new Set()).add(what));
  }
  return section(
    'Assumptions',
    reasons.size === 0
      ? element('p', {}, 'Nothing is assumed.')
      : table(
          [{ head: 'Because' }, { head: 'Taken' }],
          [...reasons].map(([reason, names]) => [sentence(reason), atMost([...names], MOST_NAMES)]),
          { stacked: true },
        ),
  );
}

/** An error that is nothing on average is told by its size alone, and what nobody measured without digits that it has not. */
function assumedValue(leaf: Leaf): string {
  if (leaf.sigma) return leaf.value === 0 ? `± ${showSigma(leaf.sigma, leaf.unit)}` : showValue(leaf);
  if (leaf.unit === 'm') return showLength(leaf.value);
  if (leaf.unit === '°') return `${plainly(leaf.value * 60)}′`;
  if (leaf.unit !== '') return showValue(leaf);
  return leaf.value !== 0 && Math.abs(leaf.value) < 1e-4
    ? `${plainly(leaf.value * 1e6)} ppm`
    : plainly(leaf.value);
}

const plainly = (value: number) => showNumber(value, 4).replace(/\.?0+$/, '');

/** The same assumption made for many checks is told for the first of them. */
const MOST_NAMES = 6;
const atMost = (names: readonly string[], most: number) =>
  names.length <= most + 1
    ? names.join('; ')
    : `${names.slice(0, most).join('; ')}; and ${names.length - most} more of the kind`;

const sentence = (text: string) => text.charAt(0).toUpperCase() + text.slice(1);

function assumedIn(leaf: Leaf): string | null {
  if (leaf.origin === 'assumed') return leaf.because;
  return leaf.spread !== undefined && /assumed|exact/.test(leaf.spread) ? leaf.spread : null;
}

function allLeaves({ inspection }: Chapter): Set<Leaf> {
  const leaves = new Set<Leaf>();
  for (const { value } of listValues(inspection.derivation))
    if (!isHole(value)) for (const leaf of leavesOf(value)) leaves.add(leaf);
  return leaves;
}

/** Folded on a screen, where a number leads to its own; unfolded on paper. */
export function derivationsSection(chapter: Chapter): Markup {
  const { stories, storyGroups, inspection } = chapter;
  const tell = tellPlace(inspection.session);
  const story = (value: Value) =>
    element(
      'div',
      { class: 'story', id: stories.get(value) ?? null },
      ...explain(value, tell).map((line) =>
        element('p', { class: line.startsWith('  source:') ? 'source' : null }, line.replace(/^ {2}/, '')),
      ),
    );
  return section(
    'Derivations',
    element(
      'p',
      { class: 'small quiet' },
      stories.size > 0
        ? 'Each result with its formula, the numbers put in, its uncertainty and its source, so that it can be computed again.'
        : 'Nothing could be computed yet.',
    ),
    ...[...storyGroups].map(([group, values]) =>
      element(
        'details',
        {},
        element('summary', {}, group, element('span', { class: 'quiet small' }, `, ${values.length}`)),
        element('div', { class: 'stories' }, ...values.map(story)),
      ),
    ),
  );
}

export function sourcesSection(chapter: Chapter): Markup {
  const { inspection, stories } = chapter;
  const { session, derivation } = inspection;
  const methods = [
    ...new Set([...stories.keys()].map((value) => (value.origin === 'computed' ? value.formula.source : ''))),
  ]
    .filter((source) => source !== '')
    .sort();
  const marks = [...derivation.marks.values()].flatMap(({ mark }): Child[][] => [
    [
      mark.name,
      mark.source ? mark.source.text : element('span', { class: 'quiet' }, 'no source stated'),
      mark.source?.date && !isHole(mark.source.date) ? mark.source.date.typed : '',
      lineLink(chapter, mark.place),
    ],
  ]);
  const files = [
    ...[...session.documents.keys()].filter((path) => path !== session.document.path),
    ...(session.job?.geoid ? [`geoid ${session.job.geoid.name}`] : []),
    ...session.points.flatMap(({ file }) => (file ? [file.text] : [])),
    ...[...session.setups.values()].flatMap(({ captured, rawLog, ephemerides }) =>
      [captured, rawLog, ephemerides].flatMap((file) => (file ? [file.text] : [])),
    ),
    ...[...session.antennas.values()].flatMap(({ calibration }) =>
      calibration ? [calibration.file.text] : [],
    ),
  ];
  return section(
    'Sources',
    marks.length > 0
      ? table([{ head: 'Mark' }, { head: 'Source' }, { head: 'As of' }, { head: 'Written in' }], marks)
      : null,
    files.length > 0 ? [element('h3', {}, 'Files and models drawn on'), list([...new Set(files)])] : null,
    methods.length > 0 ? [element('h3', {}, 'Methods'), list(methods)] : null,
    marks.length + files.length + methods.length === 0 ? element('p', {}, 'Nothing is drawn on yet.') : null,
  );
}

const list = (items: readonly Child[]): Markup =>
  element('ul', { class: 'small' }, ...items.map((item) => element('li', {}, item)));

export function cautionsSection(chapter: Chapter): Markup {
  const { hazards } = chapter.inspection.session;
  return section(
    'Site',
    hazards.length === 0
      ? element('p', {}, 'The notes name no hazard.')
      : table(
          [{ head: 'Hazard' }, { head: 'Control' }],
          hazards.map(({ text, controls }) => [
            text,
            controls.length > 0
              ? controls.map((control) => control.text).join('; ')
              : element('span', { class: 'bad' }, 'none noted'),
          ]),
        ),
    element('p', { class: 'small' }, CAUTIONS),
    element(
      'p',
      { class: 'small' },
      'Legal boundaries and certified control defer to licensed practice. Nothing in this report certifies the safety of a site.',
    ),
  );
}

export function recordSection(chapter: Chapter): Markup {
  const { session, derivation } = chapter.inspection;
  const { notes, corrections } = session;
  const standing = derivation.reviews.map(({ review, standing: state }): Child[] => [
    review.by,
    review.date && !isHole(review.date) ? review.date.typed : 'no date',
    state.is === 'stale' ? `changed since: ${state.changed.join(', ')}` : STANDINGS[state.is],
    lineLink(chapter, review.place),
  ]);
  return section(
    'Review',
    standing.length === 0
      ? element('p', {}, 'Nobody has reviewed this session yet.')
      : table([{ head: 'Who' }, { head: 'When' }, { head: 'Seal' }, { head: 'Written in' }], standing),
    corrections.length > 0
      ? table(
          [{ head: 'Correction' }, { head: 'By' }, { head: 'Because' }, { head: 'When' }],
          corrections.map(({ text, by, because, at }) => [
            text,
            by?.name ?? '–',
            because?.text ?? '–',
            clockTime(instantOf(at, session.job), chapter.inspection) ?? '–',
          ]),
        )
      : null,
    notes.length > 0
      ? [
          element('h3', {}, 'Notes'),
          list(notes.map(({ text, place }) => [text, ' (', lineLink(chapter, place), ')'])),
        ]
      : null,
    standing.length === 0
      ? null
      : element('p', { class: 'small quiet' }, 'A seal shows change and proves nobody’s identity.'),
  );
}

const STANDINGS = {
  unsealed: 'not sealed',
  fresh: 'unchanged since',
  unverifiable: 'cannot be verified',
} as const;

/** The session line by line, so that whatever leads to a line leads somewhere. */
export function writtenSection(chapter: Chapter): Markup {
  const { text } = chapter.inspection.session.document;
  const lines = text.replace(/^\ufeff/, '').split(/\r\n|\r|\n/);
  if (lines.at(-1) === '') lines.pop();
  const left = lines.length - MOST_LINES;
  return section(
    'The session as written',
    element(
      'ol',
      { class: 'written' },
      ...lines
        .slice(0, MOST_LINES)
        .map((line, index) => element('li', { id: lineAnchor(chapter, index + 1) }, line)),
    ),
    left > 0 ? element('p', { class: 'quiet' }, `${left} more lines are not printed.`) : null,
  );
}
