/**
 * Recorded instrument logs against what an independent decoder made of them: the companions that Debian's source
 * package of the general position daemon carries. `node tests/reference/evidence-captures.mjs` fetches both.
 */
import { existsSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { nmeaReader } from '../../server/evidence/nmea/log.ts';
import { captureReader } from '../../server/evidence/rtcm3/capture.ts';
import { frameReader } from '../../server/evidence/rtcm3/frames.ts';
import { readMessage } from '../../server/evidence/rtcm3/message.ts';
import { signalMessage, signalMessageBits } from '../../server/link/message-size.ts';

const cache = new URL('../../.cache/evidence/', import.meta.url).pathname;
const absent = !existsSync(`${cache}rtcm3.log`);
if (absent) {
  process.stderr.write(
    'NOT TESTED: the recorded logs are absent; fetch them with "npm run fetch:captures".\n',
  );
}

interface Companion {
  readonly type: number;
  readonly length: number;
  readonly station_id?: number;
  readonly x?: number;
  readonly y?: number;
  readonly z?: number;
  readonly h?: number;
  readonly tow?: number;
  readonly satellites?: readonly { readonly ident: number }[];
  readonly desc?: string;
  readonly setup_id?: number;
  readonly serial?: string;
  readonly receiver?: string;
  readonly msg?: string;
  readonly mjd?: number;
  readonly sec?: number;
}

const companions = (log: string): readonly Companion[] =>
  readFileSync(`${cache}${log}.chk`, 'utf8')
    .split('\n')
    .filter((line) => line.startsWith('{'))
    .map((line) => JSON.parse(line) as Companion);

function frames(log: string) {
  const payloads: Uint8Array[] = [];
  const reader = frameReader(
    (frame) => payloads.push(frame.payload),
    () => undefined,
  );
  reader.push(readFileSync(`${cache}${log}`));
  reader.finish();
  return payloads;
}

describe.skipIf(absent)('recorded RTCM 3 streams decode as their companions say', () => {
  it.each(['rtcm3.log', 'rtcm3.bndm.log', 'rtcm3.2.log'])('%s', (log) => {
    const expected = companions(log);
    const payloads = frames(log);
    expect(payloads.map((payload) => payload.length)).toEqual(expected.map((message) => message.length));
    const compared = new Set<string>();
    payloads.forEach((payload, index) => {
      const message = readMessage(payload);
      const companion = expected[index];
      expect(message.number).toBe(companion?.type);
      if (!companion || message.kind === 'other') return;
      expect(message.kind).not.toBe('malformed');
      compared.add(message.kind);
      if (message.kind === 'position') {
        expect(message.station).toBe(companion.station_id);
        expect(message.position).toEqual({ x: companion.x, y: companion.y, z: companion.z });
        expect(message.antennaHeight).toBe(companion.h);
      } else if (message.kind === 'equipment' && companion.desc !== undefined) {
        expect(message.station).toBe(companion.station_id);
        expect(message.antennaDescriptor).toBe(companion.desc);
        expect(message.antennaSetup).toBe(companion.setup_id);
        if (companion.serial !== undefined) expect(message.antennaSerial).toBe(companion.serial);
        if (companion.receiver !== undefined) expect(message.receiverDescriptor).toBe(companion.receiver);
      } else if (message.kind === 'text') {
        expect(message.station).toBe(companion.station_id);
        expect(message.modifiedJulianDay).toBe(companion.mjd);
        expect(message.utcSeconds).toBe(companion.sec);
        // The companion writes the text's bytes one by one.
        expect(message.text).toBe(Buffer.from(companion.msg ?? '', 'latin1').toString('utf8'));
      } else if (message.kind === 'observations' && companion.tow !== undefined) {
        expect(message.station).toBe(companion.station_id);
        expect(message.epoch.milliseconds).toBe(companion.tow);
        expect(message.satellites.map((name) => Number(name.slice(1)))).toEqual(
          companion.satellites?.map((satellite) => satellite.ident),
        );
      }
    });
    expect(compared.size).toBeGreaterThan(1);
  });

  it('the masks of recorded MSM7 account for every byte of their frames', () => {
    let checked = 0;
    for (const payload of frames('rtcm3.2.log')) {
      const message = readMessage(payload);
      const signal = signalMessage(message.number);
      if (message.kind !== 'observations' || !signal) continue;
      const bits = signalMessageBits(
        signal.kind,
        message.satellites.length,
        message.signals.length,
        message.cells,
      );
      expect(Math.ceil(bits / 8)).toBe(payload.length);
      checked += 1;
    }
    expect(checked).toBe(companions('rtcm3.2.log').filter((one) => signalMessage(one.type)).length);
  });

  it('a whole capture gives one station, its position and its rates', () => {
    const reader = captureReader();
    reader.push(readFileSync(`${cache}rtcm3.bndm.log`));
    const capture = reader.finish();
    const expected = companions('rtcm3.bndm.log');
    const station = capture.stations.find((one) => one.positions.length > 0);
    const position = expected.find((one) => one.type === 1006);
    expect(station?.station).toBe(position?.station_id);
    expect(station?.positions.map((sighting) => sighting.value.position)).toEqual([
      { x: position?.x, y: position?.y, z: position?.z },
    ]);
    const towsOf1004 = expected.filter((one) => one.type === 1004).map((one) => one.tow ?? 0);
    const [first = 0, second = 0] = towsOf1004;
    expect(station?.messages.find((one) => one.number === 1004)?.interval).toBe((second - first) / 1000);
    expect(capture.begin).toBe(first / 1000);
    expect(capture.end).toBe((towsOf1004.at(-1) ?? 0) / 1000);
    for (const { number, count } of capture.stations.flatMap((one) => one.messages)) {
      expect(count).toBe(expected.filter((one) => one.type === number).length);
    }
  });
});

describe.skipIf(absent)('a recorded NMEA log decodes as its companion says', () => {
  it('every position, to the digits that the companion prints', () => {
    interface Fix {
      readonly lat?: number;
      readonly lon?: number;
      readonly altHAE?: number;
      readonly altMSL?: number;
      readonly geoidSep?: number;
    }
    const lines = readFileSync(`${cache}nmea-rtk.log.chk`, 'utf8').split(/\r?\n/);
    let sentence = '';
    let compared = 0;
    for (const line of lines) {
      if (/^\$G.GGA/.test(line)) sentence = line;
      if (!line.startsWith('{"class":"TPV"')) continue;
      const fix = JSON.parse(line) as Fix;
      const reader = nmeaReader({});
      reader.push(new TextEncoder().encode(`${sentence}\r\n`));
      const epoch = reader.finish().track[0];
      expect(epoch?.position.latitude).toBeCloseTo(fix.lat ?? Number.NaN, 8);
      expect(epoch?.position.longitude).toBeCloseTo(fix.lon ?? Number.NaN, 8);
      expect(epoch?.height).toBeCloseTo(fix.altHAE ?? Number.NaN, 4);
      expect(epoch?.separation).toBeCloseTo(fix.geoidSep ?? Number.NaN, 4);
      compared += 1;
    }
    expect(compared).toBeGreaterThan(20);
  });
});
