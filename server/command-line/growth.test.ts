/** Four times as many of whatever may stand any number of times take about four times as long, for every answer. */
import { describe, expect, it } from 'vitest';
import { openDocument } from '../../grammar/document.ts';
import { growth } from '../../tests/growth.ts';
import { captureReader } from '../evidence/rtcm3/capture.ts';
import { inspect, type Inspection } from '../inspect.ts';
import { keyCard } from '../record/card/key-card.ts';
import { findingsJson } from '../record/machine/findings-json.ts';
import { sarifResults } from '../record/machine/findings-sarif.ts';
import { valuesJson } from '../record/machine/values-json.ts';
import { reportMarkdown } from '../record/report/markdown.ts';
import { NO_FILES } from '../session/files.ts';
import { sealOf } from '../session/seal.ts';
import { findingsText } from './check-text.ts';

/** Linear is 4, the square 16. */
const MOST = 9;

const HEAD = `job "x"
  date 2026-05-19
  clock UTC+01:00
  grid EPSG:3763
  tolerance 35 mm + 1 ppm horizontal, 50 mm + 1 ppm vertical
mark M0
  position -41203.118 m E, 164904.902 m N
  height 6.284 m orthometric
  separation 54.917 m
  uncertainty 8 mm horizontal, 12 mm vertical
antenna A1
  phase-centre 92 mm above arp
`;
const SETUP = `${HEAD}setup B on M0 with A1 at 07:50 until 15:40\n  measured 1.284 m to foot, 48 mm off centre, at 07:52\n`;
const lines = (count: number, line: (at: number) => string) =>
  Array.from({ length: count }, (_, at) => line(at)).join('');
const minute = (at: number) => `0${8 + (Math.floor(at / 60) % 2)}:${String(at % 60).padStart(2, '0')}`;

const MANY: readonly (readonly [string, number, (count: number) => string])[] = [
  [
    'setups',
    60,
    (count) =>
      HEAD +
      lines(
        count,
        (at) =>
          `setup S${at} on M0 with A1 at 07:50 until 15:40\n  measured 1.284 m to foot\n  extnsion 250 mm\n`,
      ),
  ],
  ['extensions', 300, (count) => SETUP + lines(count, () => '  extension 250 mm\n')],
  ['unreadable keyed lines', 200, (count) => SETUP + lines(count, (at) => `  keyed bla${at} 12 xx\n`)],
  [
    'keyed lines with commas',
    200,
    (count) => SETUP + lines(count, (at) => `  keyed antenna-height 1,28${at} m to arp\n`),
  ],
  [
    'good keyed lines',
    100,
    (count) =>
      SETUP + lines(count, (at) => `  keyed antenna-height 1.28${at % 10} m to arp at ${minute(at)}\n`),
  ],
  ['terms of one line', 300, (count) => `${SETUP}  measured ${lines(count, () => '1.2 m + ')}1 m to foot\n`],
  ['characters that nobody sees', 2000, (count) => `${HEAD}note "${lines(count, () => 'a\u200b')}"\n`],
  ['messages', 200, (count) => `${SETUP}stream from B\n${lines(count, () => '  message 1006 every 10 s\n')}`],
  ['controls', 300, (count) => `${HEAD}hazard "x"\n${lines(count, (at) => `  control "c${at}"\n`)}`],
  [
    'tape points',
    300,
    (count) =>
      `${HEAD}antenna A2\n${lines(count, (at) => `  tape-point T${at} radius 168 mm, 35 mm above arp\n`)}`,
  ],
  ['remarks', 300, (count) => SETUP + lines(count, (at) => `  remark "c${at}"\n`)],
  ['photographs', 300, (count) => `${HEAD}mark M2\n${lines(count, (at) => `  photo "c${at}.jpg"\n`)}`],
  ['events', 100, (count) => SETUP + lines(count, (at) => `event disturbance at ${minute(at)} "x"\n`)],
];

const ANSWERS: Readonly<Record<string, (inspection: Inspection) => unknown>> = {
  check: (inspection) =>
    findingsText(Object.assign(inspection, { path: 'x' }), { colours: false, width: 100, hints: true }),
  'check as JSON': (inspection) => JSON.stringify(findingsJson(inspection)),
  'check as SARIF': (inspection) => JSON.stringify(sarifResults(inspection)),
  derive: (inspection) => JSON.stringify(valuesJson([inspection])),
  tell: (inspection) => [...inspection.derivation.setups.values()].map((setup) => keyCard(setup, inspection)),
  seal: ({ session }) => sealOf(session, NO_FILES),
  'report as Markdown': (inspection) => reportMarkdown([inspection]),
};

describe.each(Object.entries(ANSWERS))('%s', (_, answer) => {
  it.each(MANY)('of many %s', (_what, count, textOf) => {
    const work = (text: string) => answer(inspect(openDocument('x', text), { ...NO_FILES }));
    expect(growth([textOf(count), textOf(4 * count)], MOST, work)).toBeLessThan(MOST);
  });
});

it('capture of bytes that all look like the start of a message', () => {
  const bytes = (text: string) =>
    Uint8Array.from({ length: Number(text) }, (_, at) => [0xd3, 0x03, 0xff][at % 3] ?? 0);
  const work = (text: string) => {
    const reader = captureReader();
    reader.push(bytes(text));
    return reader.finish();
  };
  expect(growth(['100000', '400000'], MOST, work)).toBeLessThan(MOST);
  // A checksum over each would take a thousand steps a byte; making the bytes takes some tens.
  const elapsed = (act: () => unknown) => {
    const { user } = process.cpuUsage();
    act();
    return process.cpuUsage().user - user;
  };
  elapsed(() => work('2000000'));
  expect(elapsed(() => work('2000000'))).toBeLessThan(20 * elapsed(() => bytes('2000000')));
});
