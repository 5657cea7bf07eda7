/** Readers of recorded bytes: whatever comes, facts and sentences, the same however the stream was cut. */
import fc from 'fast-check';
import { readFileSync, readdirSync } from 'node:fs';
import { antexReader } from '../../server/evidence/antex.ts';
import { nmeaReader, type NmeaFacts } from '../../server/evidence/nmea/log.ts';
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
import { KEYED, log, MORNING, PM_09, SEA_LEVEL, sentence, stream } from '../recordings.ts';
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
  inputs: fc.Arbitrary<Uint8Array>,
  start: () => Reader<Facts>,
  further: (facts: Facts, bytes: Uint8Array) => void = () => undefined,
): Target {
  return target(name, cases, fc.tuple(inputs, cuts), ([bytes, lengths]) => {
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
  harmed([
    stream(KEYED, MORNING, 11),
    joined(stream(KEYED, MORNING, 3), stream(SEA_LEVEL, MORNING + 60, 3)),
    joined(...messages.map(framed)),
    ...recorded('.rtcm3'),
  ]),
  captureReader,
  finite,
);

/** Messages gone wild in frames that are right, so that what is put together of them meets them. */
export const wildStream = fc
  .array(fc.oneof(fc.constantFrom(...messages), harmed(messages)), { minLength: 1, maxLength: 12 })
  .map((some) => joined(...some.map((payload) => framed(payload.slice(0, 1023)))));
const wildStreams = reading('RTCM 3 streams gone wild', 60, wildStream, captureReader, (facts) => {
  finite(facts);
  const { frames, strayBytes, stations, stationless, begin = 0, end = 0 } = facts;
  law(strayBytes === 0, `${strayBytes} bytes of good frames belong to none`);
  const counts = [...stations.flatMap(({ messages: some }) => some), ...stationless].map(
    ({ count }) => count,
  );
  law(counts.reduce((sum, count) => sum + count, 0) === frames, 'messages are not counted once each');
  law(begin <= end, 'it ends before it begins');
  for (const { positions, equipment } of stations)
    for (const { first, last } of [...positions, ...equipment])
      law(first.offset <= last.offset, 'it was seen last before it was seen first');
});

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
  harmed([
    log(([4, 4, 5, 4] as const).map((quality) => ({ antenna: PM_09, separation: 54.83, quality }))),
    ...recorded('.nmea'),
  ]),
  () => nmeaReader({}),
  (facts, bytes) => {
    sound(facts);
    const without = logged(bytesOf(linesThatHold(textFrom(bytes))), {});
    const said = (all: NmeaFacts) => ({ ...all, problems: [], failedChecksums: 0 });
    same(said(facts), said(without), 'a sentence whose checksum is wrong says something');
  },
);
const textFrom = (bytes: Uint8Array) => new TextDecoder().decode(bytes);

/** The lines whose sentence has the checksum that it states. */
const linesThatHold = (text: string) =>
  text
    .split(/\r\n|\n|\r/)
    .map((line) => line.slice(0, 1024))
    .filter((line) => {
      const [, body = '', stated = ''] = /.*\$([^*]*)\*([0-9A-Fa-f]{2})/.exec(line) ?? [];
      return sentence(body).slice(-4, -2) === stated.toUpperCase();
    })
    .join('\n');

function logged(bytes: Uint8Array, options: Parameters<typeof nmeaReader>[0]): NmeaFacts {
  const reader = nmeaReader(options);
  reader.push(bytes);
  return reader.finish();
}

/** Facts that can be true together. */
function sound(facts: NmeaFacts): void {
  finite(facts);
  const { means, epochs, track, satellites, hdop, age } = facts;
  law(means.reduce((sum, mean) => sum + mean.epochs, 0) === epochs, 'some epochs have no mean');
  law(facts.fixedShare >= 0 && facts.fixedShare <= 1, `a share is ${facts.fixedShare}`);
  for (const range of [satellites, hdop, age])
    law(!range || (range.least >= 0 && range.least <= range.most), `a size is ${range?.least ?? NaN}`);
  for (const range of [satellites?.least, satellites?.most])
    law(range === undefined || Number.isInteger(range), `there are ${range ?? NaN} satellites`);
  for (const { position } of [...means, ...track])
    law(Math.abs(position.latitude) <= 90 && Math.abs(position.longitude) <= 180, 'a place off the Earth');
  for (const { quality, height } of means) {
    const heights = track.filter((epoch) => epoch.quality === quality).map((epoch) => epoch.height);
    if (epochs !== track.length || height === undefined) continue;
    const [least, most] = [
      Math.min(...heights.map((one) => one ?? NaN)),
      Math.max(...heights.map((one) => one ?? NaN)),
    ];
    const digits = 1e-9 * Math.max(1, Math.abs(least), Math.abs(most));
    law(height >= least - digits && height <= most + digits, `the mean height ${height} is none of them`);
  }
}

/** One instant by sentences of every kind that is read, some of which say less. */
const instant = (second: number) => {
  const time = `0725${String(second % 60).padStart(2, '0')}.00`;
  const place = '4109.3943328,N,00836.8026894,W';
  return [
    `GNRMC,${time},A,${place},0.0,,190526,,,R`,
    `GNZDA,${time},19,05,2026,00,00`,
    `GNGGA,${time},${place},4,16,0.7,5.281,M,54.830,M,1.2,0012`,
    `GPGGA,${time},${place},4,09,1.7,5.281,M,,,,`,
    `GNGNS,${time},${place},RRAN,18,0.7,6.284,54.917,1.2,0012`,
    `GNGST,${time},1.0,0.9,0.8,45.0,0.01,0.02,0.03`,
  ];
};
/** Sentences gone wild, with checksums that are right all the same. */
export const wildLog = fc
  .array(
    fc
      .tuple(fc.nat(59), fc.nat(5))
      .chain(([second, which]) =>
        fc.oneof(
          fc.constant(bytesOf(instant(second)[which] ?? '')),
          harmed([bytesOf(instant(second)[which] ?? '')]),
        ),
      ),
    { minLength: 1, maxLength: 24 },
  )
  .map((some) => bytesOf(some.map((body) => sentence(textFrom(body).replace(/[\r\n$*]/g, ' '))).join('')));
const MORNING_PART = 7 * 3600 + 25 * 60 + 30;
const wildLogs = reading(
  'NMEA sentences gone wild',
  120,
  wildLog,
  () => nmeaReader({}),
  (facts, bytes) => {
    sound(facts);
    const [before, after] = [
      logged(bytes, { window: { from: 0, until: MORNING_PART + 3e-7 } }),
      logged(bytes, { window: { from: MORNING_PART + 7e-7, until: 86_400 - 5e-7 } }),
    ];
    law(before.epochs + after.epochs === facts.epochs, 'two parts of the day are not the whole of it');
    for (const { time } of before.track)
      law(time % 86_400 < MORNING_PART + 1e-6, 'an epoch lies outside the time asked for');
  },
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
const antex = reading(
  'ANTEX',
  120,
  harmed([bytesOf(antexFile)]),
  () => antexReader('CHOKE_RING_A1 NONE'),
  finite,
);

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
    harmed([...pointsTexts.slice(index), ...pointsTexts.slice(0, index)].map(bytesOf)),
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

export const EVIDENCE = [
  rtcm,
  cutMessages,
  wildMessages,
  wildStreams,
  nmea,
  wildLogs,
  antex,
  rinex,
  ...points,
];
