/** Times without a date past midnight: of the next day where the base stood only then, and nowhere else. */
import { describe, expect, it } from 'vitest';
import { openDocument } from '../grammar/document.ts';
import { trustOf } from '../server/derive/trust/trust.ts';
import { inspect } from '../server/inspect.ts';
import { NO_FILES } from '../server/session/files.ts';

const check = (name: string, at: string) => `check ${name} on PM-09 at ${at}
  observed    -40311.876 m E, 165377.410 m N, height 5.203 m orthometric
  quality     fixed, 60 epochs, pdop 1.5, 16 satellites
`;
const night = (setup: string, checks: string, details = '') =>
  inspect(
    openDocument(
      'night.trib',
      `job "Night works"
  date        2026-05-19
  clock       UTC+01:00
  grid        EPSG:3763
  tolerance   35 mm + 1 ppm horizontal, 50 mm + 1 ppm vertical
mark PM-14
  position    -41203.118 m E, 164904.902 m N
  height      6.284 m orthometric
  separation  54.917 m
  uncertainty 8 mm horizontal, 12 mm vertical
mark PM-09
  position    -40311.882 m E, 165377.404 m N
  height      5.196 m orthometric
  separation  54.915 m
  uncertainty 8 mm horizontal, 12 mm vertical
antenna A1
setup BASE on PM-14 with A1 ${setup}
  measured    1.533 m to arp, at 21:52
  keyed       position 41°09'08.18286"N, 8°37'26.27078"W, height 61.201 m ellipsoidal
  keyed       antenna-height 1.533 m to arp
${details}${checks}`,
    ),
    NO_FILES,
  );
const codes = ({ findings }: ReturnType<typeof night>) => findings.map(({ code }) => code);
/** 2026-05-20 00:55 UTC, which is 01:55 of the job's clock. */
const NEXT = Date.UTC(2026, 4, 20, 0, 55) / 1000;
const instantOf = ({ derivation }: ReturnType<typeof night>, name: string) =>
  derivation.checks.find((one) => one.check.name === name)?.instant;

describe('past midnight', () => {
  const whole = night('at 21:50 until 2026-05-20 02:10', check('OPEN', '22:10') + check('CLOSE', '01:55'));
  it('a check follows the base, and the night is bracketed', () => {
    expect(instantOf(whole, 'CLOSE')).toBe(NEXT);
    expect(trustOf(whole.session, whole.derivation).day).toBe('bracketed');
    expect(codes(whole)).not.toContain('time/outside-setup');
  });

  it('so do a reading and what was keyed', () => {
    const found = night(
      'at 21:50 until 2026-05-20 02:10',
      check('OPEN', '22:10'),
      '  measured    1.532 m to arp, at 02:06\n  keyed       antenna-height 1.783 m to arp at 00:30\n',
    );
    const states = found.derivation.setups.get('BASE')?.keyed.map(({ state }) => state.from);
    expect(states).toEqual([Date.UTC(2026, 4, 19, 20, 50) / 1000, Date.UTC(2026, 4, 19, 23, 30) / 1000]);
    expect(codes(found)).not.toContain('time/outside-setup');
  });

  it('a base that still stands takes half a day with it', () => {
    expect(instantOf(night('at 21:50', check('CLOSE', '01:55')), 'CLOSE')).toBe(NEXT);
  });

  it('a date that was typed stays', () => {
    const dated = night('at 21:50 until 2026-05-20 02:10', check('CLOSE', '2026-05-19 01:55'));
    expect(instantOf(dated, 'CLOSE')).toBe(NEXT - 86_400);
  });
});

describe('a day', () => {
  it.each([
    ['before its base, by a slip of the hour', 'at 07:50 until 12:10', '06:55'],
    ['before a base that still stands', 'at 07:50', '06:55'],
    ['after its base', 'at 07:50 until 12:10', '13:00'],
    ['after the end of a night', 'at 21:50 until 2026-05-20 02:10', '02:40'],
  ])('leaves a check %s where it was typed, and says so', (_, setup, at) => {
    const found = night(setup, check('ODD', at));
    const [hours = 0, minutes = 0] = at.split(':').map(Number);
    expect(instantOf(found, 'ODD')).toBe(Date.UTC(2026, 4, 19, hours - 1, minutes) / 1000);
    // A base without an end stands on, so that a check behind its beginning is inside.
    expect(codes(found)).toContain('time/outside-setup');
  });
});
