/** Readers of recorded bytes: whatever comes, facts and sentences, the same however the stream was cut. */
import fc from 'fast-check';
import { readFileSync, readdirSync } from 'node:fs';
import { antexReader } from '../../server/evidence/antex.ts';
import { nmeaReader } from '../../server/evidence/nmea/log.ts';
import type { Column, ColumnPlan } from '../../server/evidence/points/column-plan.ts';
import { pointsReader, type PointRow } from '../../server/evidence/points/points-file.ts';
import { readRinexHeader } from '../../server/evidence/rinex-header.ts';
import { captureReader } from '../../server/evidence/rtcm3/capture.ts';
import {
  antennaMessage,
  biasMessage,
  descriptionMessage,
  framed,
  legacyMessage,
  packed,
  positionMessage,
  signalMessageBytes,
} from '../../server/evidence/rtcm3/encoder.test-support.ts';
import { readMessage } from '../../server/evidence/rtcm3/message.ts';
import { KEYED, log, MORNING, PM_09, SEA_LEVEL, stream } from '../recordings.ts';
import { bytesOf, chunked, cuts, harmed, joined } from './bytes.ts';
import { law, same, target, type Target } from './target.ts';

const RECORDINGS = 'samples/recordings';
const recorded = (end: string) =>
  readdirSync(RECORDINGS)
    .filter((name) => name.endsWith(end))
    .map((name) => new Uint8Array(readFileSync(`${RECORDINGS}/${name}`)).slice(0, 12_000));

interface Problems {
  readonly problems: readonly {
    readonly sentence: string;
    readonly line?: number;
    readonly offset?: number;
  }[];
}
interface Reader<Facts> {
  readonly push: (chunk: Uint8Array) => void;
  readonly finish: () => Facts;
}

/** Reads twice, whole and in pieces, and hands what was found to a further law. */
function reading<Facts extends Problems>(
  name: string,
  cases: number,
  wholes: readonly Uint8Array[],
  start: () => Reader<Facts>,
  further: (facts: Facts, bytes: Uint8Array) => void = () => undefined,
): Target {
  return target(name, cases, fc.tuple(harmed(wholes), cuts), ([bytes, lengths]) => {
    const once = start();
    once.push(bytes);
    const facts = once.finish();
    const again = start();
    chunked(bytes, lengths, again.push);
    same(again.finish(), facts, 'other chunks give other facts');
    law(facts.problems.length <= 101, 'there is no end of problems');
    for (const { sentence, line = 1, offset = 0 } of facts.problems) {
      law(sentence.length > 10 && sentence.length < 2000, `a problem says ${sentence}`);
      law(
        line >= 1 && line <= bytes.length + 1 && offset >= 0 && offset <= bytes.length,
        'it is out of the file',
      );
      law(!/undefined|NaN|\[object/.test(sentence) || /undefined|NaN/.test(textOf(bytes)), sentence);
    }
    further(facts, bytes);
  });
}
const textOf = (bytes: Uint8Array) => Buffer.from(bytes).toString('latin1');

/** No fact holds a number that is none. */
function finite(facts: unknown): void {
  if (typeof facts === 'number') law(Number.isFinite(facts), `a fact is ${facts}`);
  else if (facts instanceof Map || facts instanceof Set || Array.isArray(facts)) [...facts].forEach(finite);
  else if (typeof facts === 'object' && facts !== null) Object.values(facts).forEach(finite);
}

const messages: readonly Uint8Array[] = [
  positionMessage({ station: 12, x: 47551481553, y: -7211831676, z: 41752124216 }),
  positionMessage({ station: 12, x: 47551481553, y: -7211831676, z: 41752124216, height: 15330 }),
  antennaMessage(12, 'TRB-CHOKE       NONE', 1),
  antennaMessage(12, 'TRB-CHOKE       NONE', 1, '0413'),
  descriptionMessage(12, 0, ['TRB-CHOKE       NONE', '0413', 'RECEIVER X', '1.02', '2207']),
  biasMessage(12, true, [4, undefined, -7, 0]),
  legacyMessage(1004, 12, 200_000_000, [3, 9, 17]),
  legacyMessage(1012, 12, 30_000_000, [1, 24]),
  stationTextMessage(12, 'the base was moved'),
  ...[1074, 1075, 1077, 1087, 1097, 1107, 1117, 1127].map((number) =>
    signalMessageBytes({ number, station: 12, epoch: 25_000_000, satellites: [1, 5, 33], signals: [2, 16] }),
  ),
];

/** 1029: station, day, second, characters, bytes, text (RTCM 10403.3, table 3.5-31). */
function stationTextMessage(station: number, text: string): Uint8Array {
  const code = bytesOf(text);
  return packed([
    ...([
      [1029, 12],
      [station, 12],
      [61_179, 16],
      [25_000, 17],
      [text.length, 7],
      [code.length, 8],
    ] as const),
    ...[...code].map((byte) => [byte, 8] as const),
  ]);
}

const rtcm = reading(
  'RTCM 3',
  60,
  [
    stream(KEYED, MORNING, 11),
    joined(stream(KEYED, MORNING, 3), stream(SEA_LEVEL, MORNING + 60, 3)),
    joined(...messages.map(framed)),
    ...recorded('.rtcm3'),
  ],
  captureReader,
  finite,
);

/** A message that was cut, and whose frame is right all the same, says less than it did and nothing else. */
const cutMessages = target(
  'RTCM 3 messages cut short',
  300,
  fc.tuple(fc.constantFrom(...messages), fc.double({ min: 0, max: 1, noNaN: true, maxExcluded: true })),
  ([payload, at]) => {
    const whole = readMessage(payload);
    law(whole.kind !== 'malformed', 'a whole message is not read');
    const cut = readMessage(payload.slice(0, Math.floor(at * payload.length)));
    if (cut.kind !== 'malformed') same(cut, whole, 'a message that was cut says something else');
  },
);

/** The first bytes decide what a message is; the rest may be anything. */
const wildMessages = target('RTCM 3 messages gone wild', 300, harmed(messages), (payload) => {
  const message = readMessage(payload.slice(0, 1023));
  if (message.kind === 'malformed') return law(message.sentence.length > 10, 'it says nothing');
  return message.kind === 'other' ? undefined : finite(message);
});

const nmea = reading(
  'NMEA',
  80,
  [
    log(([4, 4, 5, 4] as const).map((quality) => ({ antenna: PM_09, separation: 54.83, quality }))),
    ...recorded('.nmea'),
  ],
  () => nmeaReader({}),
  finite,
);

const antexLine = (content: string, label: string) =>
  `${content.padEnd(60).slice(0, 60)}${label.padEnd(20)}\n`;
/** Layout and columns: ANTEX 1.4 (IGS, 2010). */
const antexFile = [
  antexLine('     1.4            M', 'ANTEX VERSION / SYST'),
  antexLine('A                   REFERENCE_ANT   NONE', 'PCV TYPE / REFANT'),
  antexLine('', 'END OF HEADER'),
  ...['CHOKE_RING_A1   NONE', 'CHOKE_RING_A1   DOME', 'PLATE_B2        NONE'].flatMap((type) => [
    antexLine('', 'START OF ANTENNA'),
    antexLine(type.padEnd(40), 'TYPE / SERIAL NO'),
    antexLine('ROBOT               INSTITUTE                5    12-MAR-24', 'METH / BY / # / DATE'),
    antexLine('  2020     1     1     0     0    0.0000000', 'VALID FROM'),
    antexLine('  2029    12    31    23    59   59.9999999', 'VALID UNTIL'),
    antexLine('   G01', 'START OF FREQUENCY'),
    antexLine('      0.12     -0.34     92.05', 'NORTH / EAST / UP'),
    antexLine('   G01', 'END OF FREQUENCY'),
    antexLine('', 'END OF ANTENNA'),
  ]),
].join('');
const antex = reading('ANTEX', 120, [bytesOf(antexFile)], () => antexReader('CHOKE_RING_A1 NONE'), finite);

const rinexWholes = recorded('.26o');
const rinex = target('RINEX header', 150, harmed(rinexWholes), (bytes) => {
  const { problems, ...header } = readRinexHeader(bytes);
  finite(header);
  for (const { sentence } of problems) law(sentence.length > 10, 'a problem says nothing');
});

const columns: readonly Column[] = [
  { role: 'name' },
  { role: 'east', unit: 'm' },
  { role: 'north', unit: 'ft' },
  { role: 'height', unit: 'm', surface: 'orthometric' },
  { role: 'code' },
  { role: 'time', clock: 'local' },
];
const angles: readonly Column[] = [
  { role: 'name', heading: 'Point' },
  { role: 'latitude', unit: 'dms', heading: 'Lat' },
  { role: 'longitude', unit: '°', heading: 'Lon' },
  { role: 'height', unit: 'usft', heading: 'H' },
  { role: 'time', clock: 'gps', heading: 'Time' },
];
const plans: readonly ColumnPlan[] = [
  { columns, separator: ',', decimal: '.', heading: 'none', date: '2026-05-19', utcOffset: 3600 },
  { columns, separator: ';', decimal: ',', heading: 'skip' },
  { columns: angles, separator: ',', decimal: '.', heading: 'names', date: '2026-05-19', leapSeconds: 18 },
];
const pointsTexts = [
  '101,-41203.118,164904.902,6.284,TOE,08:25:30\n"102, a",1,2,3,"x ""y""",2026-05-19T08:26:00Z\n',
  'n;e;n;h;c;t\r\n101;-41203,118;164904,902;6,284;TOE;08:25:30\r\n"1\n02";1e3;2;;;08:26\r\n',
  'Time,Point,Lat,Lon,H\n08:25:30.5,101,41 09 08.18N,8.62396W,61.2\n08:26,=1+2,-41°09\'08",-8.6,\n',
];
const points = plans.map((plan, index) => {
  let rows: PointRow[] = [];
  return reading(
    `points, ${plan.heading === 'names' ? 'by heading' : plan.decimal === ',' ? 'decimal comma' : 'decimal point'}`,
    80,
    [...pointsTexts.slice(index), ...pointsTexts.slice(0, index)].map(bytesOf),
    () => {
      rows = [];
      return pointsReader(plan, (row) => rows.push(row));
    },
    (facts, bytes) => {
      law(rows.length === facts.rowCount, 'the rows are not those that are counted');
      let before = 0;
      for (const row of rows) {
        law(row.line > before && row.line <= bytes.length + 1, 'rows are out of order, or out of the file');
        before = row.line;
        finite(row);
        if (row.latitude !== undefined) law(Math.abs(row.latitude) <= 90, `a latitude is ${row.latitude}`);
        if (row.longitude !== undefined)
          law(Math.abs(row.longitude) <= 180, `a longitude is ${row.longitude}`);
      }
    },
  );
});

export const EVIDENCE = [rtcm, cutMessages, wildMessages, nmea, antex, rinex, ...points];
