import { describe, expect, it } from 'vitest';
import { openDocument } from '../../../grammar/document.ts';
import { inspect } from '../../inspect.ts';
import { isHole, type Maybe, type Value } from '../../quantities/value.ts';
import { NO_FILES } from '../../session/files.ts';

const setupOf = (keyed: string) => {
  const text = `job "keyed"
  date 2026-05-19
  clock UTC+01:00
  grid EPSG:3763
mark PM-14
  position -41203.118 m E, 164904.902 m N
  height 6.284 m orthometric
  separation 54.917 m
antenna A1
  phase-centre 92 mm above arp
  tape-point RIM radius 300 mm, 35 mm above arp
setup BASE on PM-14 with A1 at 07:50 until 15:40
  measured 1.500 m to arp at 07:52
${keyed}`;
  const setup = inspect(openDocument('x.trib', text), NO_FILES).derivation.setups.get('BASE');
  if (!setup) throw new Error('the setup is missing');
  return setup;
};
const number = (value: Maybe<Value> | undefined) =>
  value === undefined || isHole(value) ? NaN : value.value;
const GRID = '  keyed position -41203.118 m E, 164904.902 m N, height 61.201 m ellipsoidal';
const upWith = (antennaHeight: string) =>
  number(setupOf(`${GRID}\n  keyed antenna-height ${antennaHeight}`).keyed[0]?.up);

describe('what a receiver was told', () => {
  it('is without error where it is the truth', () => {
    const [state] = setupOf(`${GRID}\n  keyed antenna-height 1.500 m to arp`).keyed;
    expect(Math.hypot(number(state?.east), number(state?.north), number(state?.up))).toBeLessThan(1e-6);
  });

  /** In a grid whose north lies within half a degree of true north a hundred metres east is a hundred metres east, nearly. */
  it('moves the broadcast position by what was keyed wrongly', () => {
    const wrong =
      '  keyed position -41103.118 m E, 164904.902 m N, height 71.201 m ellipsoidal\n  keyed antenna-height 1.500 m to arp';
    const [state] = setupOf(wrong).keyed;
    expect(Math.abs(number(state?.east) - 100)).toBeLessThan(0.01);
    expect(Math.abs(number(state?.up) - 10)).toBeLessThan(0.001);
  });

  it('is brought to the ARP from the phase centre and from a slant', () => {
    expect(upWith('1.592 m to phase-centre')).toBeCloseTo(0, 6);
    expect(upWith(`${Math.hypot(1.535, 0.3).toFixed(6)} m slant to RIM`)).toBeCloseTo(0, 5);
    expect(upWith('1.535 m vertical to RIM')).toBeCloseTo(0, 6);
  });

  it('has a hole where the antenna height was never keyed, and where a receiver used a geoid that is not named', () => {
    expect(isHole(setupOf(GRID).keyed[0]?.up)).toBe(true);
    const orthometric = GRID.replace('61.201 m ellipsoidal', '6.284 m orthometric');
    const [state] = setupOf(`${orthometric}\n  keyed antenna-height 1.500 m to arp`).keyed;
    expect(isHole(state?.up)).toBe(true);
    expect(Math.abs(number(state?.east))).toBeLessThan(1e-6);
  });
});

describe('keyed states', () => {
  it('begin with each change and carry on what was not changed', () => {
    const { keyed } = setupOf(
      `${GRID}\n  keyed antenna-height 1.250 m to arp\n  keyed antenna-height 1.500 m to arp at 08:31`,
    );
    expect(keyed.map(({ state }) => state.number)).toEqual([1, 2]);
    expect(number(keyed[0]?.up)).toBeCloseTo(-0.25, 6);
    expect(number(keyed[1]?.up)).toBeCloseTo(0, 6);
    // 08:31 by a clock an hour ahead of UTC.
    const midnight = Date.UTC(2026, 4, 19) / 1000;
    expect(keyed[0]?.state.until).toBe(midnight + (7 * 60 + 31) * 60);
  });
});

describe('a tripod that was set anew', () => {
  const first = `${GRID}\n  keyed antenna-height 1.500 m to arp\n`;
  const taped = '  measured 1.600 m to arp at 12:02\n';
  const relevelled = 'event re-level at 12:00\n';
  const ups = (text: string) => setupOf(text).keyed.map(({ up }) => Number(number(up).toFixed(6)));
  const told = (text: string) => number(setupOf(text).tell.antennaHeight);
  const anew = '  keyed antenna-height 1.600 m to arp at 12:03\n';

  it('is right with the height that was taped then', () => {
    expect(ups(first + taped + anew + relevelled)).toEqual([0, 0]);
    expect(told(first + taped + anew + relevelled)).toBe(1.6);
  });
  it('is right without a note of the event, too, since the receiver was told what was taped', () => {
    expect(ups(first + taped + anew)).toEqual([0, 0]);
    expect(told(first + taped + anew)).toBe(1.6);
  });
  it('is wrong by what the new height is not', () => {
    expect(ups(first + taped + anew.replace('1.600', '1.350') + relevelled)).toEqual([0, -0.25]);
  });
  it('is wrong where only something else was keyed since', () => {
    expect(ups(`${first}${taped}${GRID} at 12:30\n${relevelled}`)).toEqual([0, -0.1]);
  });
  it('is to be told the new height', () => {
    const { tell, arp } = setupOf(first + taped + relevelled);
    expect(number(tell.antennaHeight)).toBe(1.6);
    if (isHole(tell.arp) || isHole(arp)) throw new Error('the antenna is known');
    const [now, begun] = [tell.arp, arp];
    const rise = (['x', 'y', 'z'] as const).map((axis) => now[axis].value - begun[axis].value);
    expect(Math.hypot(...rise)).toBeCloseTo(0.1, 6);
  });
  it('may only have sunk where nothing says that it was set anew', () => {
    expect(ups(`${first}${taped}${GRID} at 12:30\n`)).toEqual([0, 0]);
    expect(told(first + taped)).toBe(1.5);
  });
});
