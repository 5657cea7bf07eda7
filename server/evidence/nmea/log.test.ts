import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { TimeWindow } from './occupation.ts';
import { nmeaReader } from './log.ts';

/** Adds the checksum: the exclusive or of everything between the dollar and the star (NMEA 0183). */
function sentence(body: string) {
  const sum = [...body].reduce((value, character) => value ^ character.charCodeAt(0), 0);
  return `$${body}*${sum.toString(16).toUpperCase().padStart(2, '0')}\r\n`;
}

function read(text: string, window?: TimeWindow, chunk = 7) {
  const reader = nmeaReader(window ? { window } : {});
  const bytes = new TextEncoder().encode(text);
  for (let from = 0; from < bytes.length; from += chunk) reader.push(bytes.subarray(from, from + chunk));
  return reader.finish();
}

const hms = (seconds: number) => {
  const two = (value: number) => String(Math.floor(value)).padStart(2, '0');
  return `${two(seconds / 3600)}${two((seconds / 60) % 60)}${two(seconds % 60)}.00`;
};
const gga = (time: number, minutes: string, altitude: string, quality = 4, talker = 'GN') =>
  sentence(
    `${talker}GGA,${hms(time)},41${minutes},N,00837.437800,W,${quality},16,0.8,${altitude},M,54.917,M,1.0,0012`,
  );
const rmc = (time: number, date: string) =>
  sentence(`GNRMC,${hms(time)},A,4109.1363810,N,00837.4378000,W,0.01,0.0,${date},,,R`);
const start = 8 * 3600 + 25 * 60;

describe('an NMEA log', () => {
  it('takes the height above the ellipsoid from altitude and separation', () => {
    const facts = read(gga(start, '09.136381', '6.284'));
    expect(facts.track[0]?.height).toBeCloseTo(6.284 + 54.917, 9);
    expect(facts.means[0]?.height).toBeCloseTo(61.201, 9);
    expect(facts.means[0]?.position.latitude).toBeCloseTo(41 + 9.136381 / 60, 12);
    expect(facts.means[0]?.position.longitude).toBeCloseTo(-(8 + 37.4378 / 60), 12);
    expect(facts.separation).toEqual({ least: 54.917, mean: 54.917, most: 54.917 });
  });

  it('leaves the height a hole where the separation is not stated', () => {
    const facts = read(sentence('GPGGA,082500,4109.1,N,00837.4,W,1,08,1.2,6.2,M,,M,,'));
    expect(facts.track[0]?.altitude).toBe(6.2);
    expect(facts.track[0]?.height).toBeUndefined();
    expect(facts.means[0]?.height).toBeUndefined();
  });

  it('gives mean and scatter of each quality, and the share of fixed', () => {
    const facts = read(
      gga(start, '09.136380', '6.280') +
        gga(start + 1, '09.136382', '6.290') +
        gga(start + 2, '09.136390', '7.000', 5) +
        gga(start + 3, '09.136384', '6.300'),
    );
    expect(facts.epochs).toBe(4);
    expect(facts.fixedShare).toBe(0.75);
    expect(facts.means.map((mean) => [mean.quality, mean.epochs])).toEqual([
      ['fixed', 3],
      ['float', 1],
    ]);
    const [fixed] = facts.means;
    expect(fixed?.height).toBeCloseTo(6.29 + 54.917, 9);
    expect(fixed?.spread?.up).toBeCloseTo(0.01, 9);
    // Two millionths of a minute of latitude at 41.15 degrees: M = a(1 - e2) / W^3 = 6363071 m, by hand.
    expect(fixed?.spread?.north).toBeCloseTo((0.000002 / 60) * (Math.PI / 180) * 6_363_071, 6);
    expect(fixed?.spread?.east).toBeCloseTo(0, 9);
    expect(facts.means[1]?.spread).toBeUndefined();
  });

  it('weighs by the deviations that GST states, where every epoch has them', () => {
    const gst = (time: number, sigma: number) =>
      sentence(`GNGST,${hms(time)},,,,,${sigma},${sigma},${2 * sigma}`);
    const facts = read(
      gga(start, '09.136380', '6.200') +
        gst(start, 0.01) +
        gst(start + 1, 0.02) +
        gga(start + 1, '09.136380', '6.300', 4, 'GP'),
    );
    // Weights 4 to 1.
    expect(facts.means[0]?.weighted?.height).toBeCloseTo(54.917 + (4 * 6.2 + 6.3) / 5, 9);
    expect(facts.means[0]?.height).toBeCloseTo(54.917 + 6.25, 9);
    expect(facts.track[1]?.deviations).toEqual({ east: 0.02, north: 0.02, up: 0.04 });
    expect(facts.talkers).toEqual(['GN', 'GP']);
  });

  it('keeps to the time asked for', () => {
    const text = Array.from({ length: 300 }, (_, index) => gga(start + index, '09.136380', '6.200')).join('');
    const facts = read(text, { from: start + 60, until: start + 119 });
    expect(facts.epochs).toBe(60);
    expect([facts.begin, facts.end]).toEqual([start + 60, start + 119]);
    expect(read(text, { from: 0, until: 10 }).problems).toMatchObject([
      { sentence: 'All 300 positions of this log lie outside the time asked for.' },
    ]);
    expect(read(text, { from: 0, until: 86_400 }).epochs).toBe(300);
  });

  it('reads the date from RMC or ZDA, and puts earlier epochs on it', () => {
    const day = Date.UTC(2026, 4, 19) / 1000;
    for (const dating of [rmc(start + 1, '190526'), sentence(`GNZDA,${hms(start + 1)},19,05,2026,00,00`)]) {
      const facts = read(gga(start, '09.136380', '6.2') + dating + gga(start + 1, '09.136380', '6.2'));
      expect(facts.dated).toBe(true);
      expect(facts.track.map((epoch) => epoch.time)).toEqual([day + start, day + start + 1]);
      expect(facts.begin).toBe(day + start);
    }
  });

  it('asks for the right day of a log of several', () => {
    const text =
      rmc(start, '180526') +
      gga(start, '09.136380', '6.1') +
      rmc(start, '190526') +
      gga(start, '09.136380', '6.2');
    expect(read(text, { from: start, until: start, date: '2026-05-19' }).means[0]?.height).toBeCloseTo(
      61.117,
      9,
    );
    expect(read(text, { from: start, until: start, date: '2026-05-18' }).means[0]?.height).toBeCloseTo(
      61.017,
      9,
    );
    expect(read(text, { from: start, until: start }).epochs).toBe(2);
    expect(read(text, { from: start, until: start, date: '2026-02-30' }).problems).toMatchObject([
      { sentence: '"2026-02-30" is not a date.' },
    ]);
  });

  it.each(['', 'dated'])('counts on across midnight %s', (dated) => {
    const midnight = 86_400;
    const text = [-2, -1, 0, 1, 2]
      .map((step) => {
        const time = (midnight + step) % midnight;
        return (dated ? rmc(time, step < 0 ? '180526' : '190526') : '') + gga(time, '09.136380', '6.2');
      })
      .join('');
    const facts = read(text);
    const times = facts.track.map((epoch) => epoch.time - (facts.track[0]?.time ?? 0));
    expect(times).toEqual([0, 1, 2, 3, 4]);
    expect(facts.problems).toEqual([]);
    expect(read(text, { from: midnight - 1, until: midnight + 1 }).epochs).toBe(3);
    expect(read(text, { from: midnight - 1, until: 1 }).epochs).toBe(3);
    if (dated) expect(read(text, { from: -1, until: 1, date: '2026-05-19' }).epochs).toBe(3);
  });

  it('says that logs were joined when the time goes back', () => {
    const facts = read(gga(start, '09.136380', '6.2') + gga(start - 600, '09.136380', '6.2'));
    expect(facts.problems).toEqual([
      { sentence: 'The time goes back here: logs may have been joined.', line: 2 },
    ]);
  });

  it('tells the uncertainty of the last digit printed', () => {
    const facts = read(sentence('GPGGA,082500,4109.1363,N,00837.4378,W,4,08,1.2,6.2,M,54.92,M,,'));
    // A ten-thousandth of a minute of the meridian at 41.15 degrees is 0.185 m; divided by the root of 12.
    expect(facts.rounding?.north).toBeCloseTo(0.18509 / Math.sqrt(12), 4);
    expect(facts.rounding?.up).toBeCloseTo(Math.hypot(0.1, 0.01) / Math.sqrt(12), 9);
  });

  it('reads GNS of several constellations', () => {
    const facts = read(
      sentence('GNGNS,082500.00,4109.136381,N,00837.437800,W,RRAN,18,0.7,6.284,54.917,1.2,0012'),
    );
    expect(facts.track[0]).toMatchObject({ quality: 'fixed', satellites: 18, age: 1.2, station: '0012' });
    expect(facts.track[0]?.height).toBeCloseTo(61.201, 9);
    expect(read(sentence('GNGNS,082500.00,4109.1,N,00837.4,W,NNN,00,,,,,')).epochs).toBe(0);
  });

  it('crosses the antimeridian without averaging through Greenwich', () => {
    const at = (longitude: string) => sentence(`GPGGA,082500,1000.0,N,${longitude},4,08,1.2,6.2,M,54.9,M,,`);
    const facts = read(at('17959.9990,E') + at('17959.9990,W').replace('082500', '082500'));
    expect(Math.abs(facts.means[0]?.position.longitude ?? 0)).toBeGreaterThan(179.99);
  });

  it('uses no sentence whose checksum is wrong or missing', () => {
    const good = gga(start, '09.136381', '6.284');
    const facts = read(good.replace('6.284', '9.284') + good.replace(/\*../, '') + good);
    expect(facts.failedChecksums).toBe(2);
    expect(facts.epochs).toBe(1);
    expect(facts.problems.map((problem) => problem.line)).toEqual([1, 2]);
    expect(facts.means[0]?.height).toBeCloseTo(61.201, 9);
  });

  it('reads sentences behind what a logger writes before them, and leaves other sentences alone', () => {
    const facts = read(
      `2026-05-19 08:25:00.123 ${gga(start, '09.136381', '6.284')}` +
        sentence('PXYZ,1,2,3') +
        sentence('GPGSV,1,1,00') +
        '!AIVDM,1,1,,B,15N000,0*00\r\n',
    );
    expect(facts.epochs).toBe(1);
    expect(facts.problems).toEqual([]);
  });

  it('takes no position that cannot be', () => {
    for (const position of [
      '4161.0,N,00837.4,W',
      '9100.0,N,00837.4,W',
      '4109.1,E,00837.4,W',
      ',,,',
      'x,N,y,W',
    ]) {
      const facts = read(sentence(`GPGGA,082500,${position},4,08,1.2,6.2,M,54.9,M,,`));
      expect(facts.epochs).toBe(0);
      expect(facts.problems).toHaveLength(1);
    }
    expect(read(sentence('GPGGA,082500,4109.1,N,00837.4,W,0,00,,,M,,M,,')).epochs).toBe(0);
    expect(read(sentence('GPGGA,256100,4109.1,N,00837.4,W,4,08,1.2,6.2,M,54.9,M,,')).epochs).toBe(0);
  });

  it('thins a long track and keeps the means exact', () => {
    const count = 9000;
    const text = Array.from({ length: count }, (_, index) =>
      gga(index, '09.136380', index % 2 ? '6.2' : '6.4'),
    ).join('');
    const facts = read(text, undefined, 65_536);
    expect(facts.epochs).toBe(count);
    expect(facts.track.length).toBeLessThanOrEqual(2000);
    expect(facts.track.length).toBeGreaterThan(1000);
    expect(facts.means[0]?.height).toBeCloseTo(54.917 + 6.3, 9);
  });

  it('never throws, whatever the bytes', () => {
    const field = fc.constantFrom(
      '',
      '1',
      '-',
      '4109.1',
      'N',
      'W',
      '082500',
      'R',
      '9'.repeat(30),
      '190526',
      '\u00ff',
    );
    const anySentence = fc
      .tuple(fc.constantFrom('GGA', 'GNS', 'GST', 'RMC', 'ZDA'), fc.array(field, { maxLength: 16 }))
      .map(([type, fields]) => new TextEncoder().encode(sentence([`GN${type}`, ...fields].join(','))));
    fc.assert(
      fc.property(
        fc.array(fc.oneof(fc.uint8Array({ maxLength: 200 }), anySentence), { maxLength: 20 }),
        (chunks) => {
          const reader = nmeaReader({ window: { from: 0, until: 80_000, date: '2026-05-19' } });
          for (const chunk of chunks) reader.push(chunk);
          expect(reader.finish().epochs).toBeGreaterThanOrEqual(0);
        },
      ),
    );
  });
});
