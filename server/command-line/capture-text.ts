/** A capture for people and for programs: stations, positions, equipment, messages with rates and gaps, satellites, problems. */
import picocolors from 'picocolors';
import type { BroadcastPosition, Capture, CapturedStation } from '../evidence/rtcm3/capture.ts';
import type { MessageCount } from '../evidence/rtcm3/message-count.ts';
import type { Sighting } from '../evidence/rtcm3/sightings.ts';
import { utcSecondsOfDay } from '../evidence/rtcm3/stream-clock.ts';
import { GRS80 } from '../geodesy/ellipsoid.ts';
import { geodeticOf } from '../geodesy/geocentric.ts';
import { messageTitle } from '../link/message-size.ts';
import { largestOf } from '../quantities/extremes.ts';
import { showAngle, showNumber } from '../quantities/show.ts';
import type { Io } from './io.ts';
import { counted, harmless, wrapped } from './terminal-text.ts';

/** The facts as they are, with each position on the ellipsoid beside it; times are GPS seconds of the first week. */
export function captureJson(path: string, capture: Capture) {
  return {
    path,
    ...capture,
    stations: capture.stations.map((station) => ({
      ...station,
      positions: station.positions.map((sighting) => ({
        ...sighting,
        geodetic: geodeticOf(GRS80, sighting.value.position),
      })),
    })),
  };
}

export function captureText(path: string, capture: Capture, io: Io): string {
  const { bold, yellow } = picocolors.createColors(io.colours);
  const { stations, stationless, problems } = capture;
  const blocks = [
    [bold(harmless(path)), ...summary(capture)].join('\n'),
    ...stations.map((station) =>
      [bold(`station ${station.station}`), ...stationLines(station, capture, io)].join('\n'),
    ),
    ...(stationless.length > 0
      ? [[bold('messages of no station'), ...messageTable(stationless, capture)].join('\n')]
      : []),
    ...(problems.length > 0
      ? [
          [
            yellow('problems'),
            ...problems.map(({ sentence, offset }) =>
              wrapped(offset === undefined ? sentence : `byte ${offset}: ${sentence}`, io.width, '  '),
            ),
          ].join('\n'),
        ]
      : []),
  ];
  return `${blocks.join('\n\n')}\n`;
}

function summary(capture: Capture): string[] {
  const { bytes, frames, begin, end, averageBytesPerSecond, fullestSecond, damagedFrames, malformed } =
    capture;
  const lines = [`  ${grouped(bytes)} bytes, ${counted(frames, 'message')}`];
  if (begin !== undefined && end !== undefined)
    lines.push(
      `  ${weekday(begin, capture)} ${utc(begin, capture)} to ${utc(end, capture)} UTC, ${showNumber(end - begin, 0)} s`,
    );
  if (averageBytesPerSecond !== undefined && fullestSecond)
    lines.push(
      `  ${showNumber(averageBytesPerSecond, 0)} bytes a second, ${grouped(fullestSecond.bytes)} in the fullest (${utc(fullestSecond.time, capture)})`,
    );
  if (damagedFrames + malformed > 0)
    lines.push(`  ${counted(damagedFrames, 'damaged message')}, ${counted(malformed, 'malformed one')}`);
  return lines;
}

function stationLines(station: CapturedStation, capture: Capture, io: Io): string[] {
  const { positions, equipment, biases, texts, observed, messages } = station;
  return [
    ...positions.flatMap((position) => positionLines(position, capture)),
    ...(positions.length === 0 ? ['  no position (1005 or 1006)'] : []),
    ...equipment.flatMap(({ value }) => {
      const antenna = [value.antennaDescriptor || 'not said', value.antennaSerial].filter(Boolean).join(', ');
      const receiver = [value.receiverDescriptor, value.receiverFirmware, value.receiverSerial]
        .filter(Boolean)
        .join(', ');
      return [
        `  antenna         ${harmless(antenna)} (${value.number})`,
        ...(receiver === '' ? [] : [`  receiver        ${harmless(receiver)}`]),
      ];
    }),
    ...(biases.length > 0 ? [`  GLONASS biases  in 1230, ${counted(biases.length, 'set')}`] : []),
    ...texts.map(({ value }) => `  text            ${harmless(value.text)}`),
    ...observed.map(({ constellation, satellites, signals, mostSatellites }) =>
      wrapped(
        `${constellation}: ${counted(satellites.length, 'satellite')}, at most ${mostSatellites} at once, on ${signals.join(' ')}: ${satellites.join(' ')}`,
        io.width,
        '  ',
      ),
    ),
    ...messageTable(messages, capture),
  ];
}

function positionLines(
  { value, count, first, last }: Sighting<BroadcastPosition>,
  capture: Capture,
): string[] {
  const { position, antennaHeight, virtual } = value;
  const { latitude, longitude, height } = geodeticOf(GRS80, position);
  const seen =
    first.time === undefined || last.time === undefined
      ? ''
      : `, ${utc(first.time, capture)} to ${utc(last.time, capture)} UTC`;
  return [
    `  ARP             ${showAngle(latitude, 'N')}, ${showAngle(longitude, 'E')}, height ${showNumber(height, 4)} m ellipsoidal (GRS80)`,
    `                  X ${showNumber(position.x, 4)} m, Y ${showNumber(position.y, 4)} m, Z ${showNumber(position.z, 4)} m`,
    ...(antennaHeight === undefined
      ? []
      : [`  antenna height  ${showNumber(antennaHeight, 4)} m above the mark`]),
    `                  ${counted(count, 'time')}${seen}${virtual ? ', of a computed station that stands nowhere' : ''}`,
  ];
}

function messageTable(messages: readonly MessageCount[], capture: Capture): string[] {
  const rows = [...messages]
    .sort((one, other) => one.number - other.number)
    .map(({ number, count, bytes, interval, gaps, largest }) => {
      const every = interval === undefined ? '' : `every ${Number(interval.toFixed(2))} s`;
      const [gap] = gaps;
      const missing = gap
        ? `${counted(gaps.length, 'gap')}, the first of ${showNumber(gap.duration, 0)} s at ${utc(gap.from, capture)}`
        : '';
      return [
        String(number),
        messageTitle(number) ?? '',
        String(count),
        every,
        grouped(bytes),
        grouped(largest),
        missing,
      ];
    });
  const head = ['', '', 'count', 'rate', 'bytes', 'largest', ''];
  const widths = head.map((_, column) => largestOf([head, ...rows].map((row) => row[column]?.length ?? 0)));
  return [head, ...rows].map((row) =>
    `  ${row
      .map((cell, column) =>
        column === 2 || column === 4 || column === 5
          ? cell.padStart(widths[column] ?? 0)
          : cell.padEnd(widths[column] ?? 0),
      )
      .join('  ')}`.trimEnd(),
  );
}

const grouped = (count: number) => String(count).replace(/\B(?=(\d{3})+$)/g, ' ');

function utc(time: number, { leapSeconds }: Capture): string {
  const seconds = Math.floor(utcSecondsOfDay(time, leapSeconds));
  const pad = (number: number) => String(number).padStart(2, '0');
  return `${pad(Math.floor(seconds / 3600))}:${pad(Math.floor((seconds % 3600) / 60))}:${pad(seconds % 60)}`;
}

const WEEKDAYS = ['Sunday', 'Monday', 'Tuesday', 'Wednesday', 'Thursday', 'Friday', 'Saturday'];
const weekday = (time: number, { leapSeconds }: Capture) =>
  WEEKDAYS[((Math.floor((time - leapSeconds) / 86_400) % 7) + 7) % 7] ?? '';
