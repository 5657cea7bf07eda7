/** What findings say and what hangs under them, where a direction, a size or a cause could be the wrong one. */
import { describe, expect, it } from 'vitest';
import { openDocument } from '../../grammar/document.ts';
import { inspect } from '../inspect.ts';
import { NO_FILES } from '../session/files.ts';
import { diagnosesOf } from '../slips/diagnosis.ts';
import { toldDiagnosis } from './check/diagnosis-told.ts';

/** The ARP stands 1.533 m above the mark: √(1.284² − 0.048²) + 0.250, the tape and the extension. */
const day = (keyedHeight: string, more: string) => `job "Pier"
  date        2026-05-19
  clock       UTC+01:00
  grid        EPSG:3763
  tolerance   35 mm + 1 ppm horizontal, 100 mm + 1 ppm vertical
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
  phase-centre 92 mm above arp
setup BASE on PM-14 with A1 at 07:50 until 15:40
  measured    1.284 m to foot, 48 mm off centre, at 07:52
  extension   250 mm
  keyed       position 41°09'08.18286"N, 8°37'26.27078"W, height 61.201 m ellipsoidal
  keyed       antenna-height ${keyedHeight} m to arp
${more}`;
/** A check on the second mark, off by so many millimetres upward. */
const check = (name: string, time: string, up: number) => `check ${name} on PM-09 at ${time}
  observed    -40311.882 m E, 165377.404 m N, height ${(5.196 + up / 1000).toFixed(3)} m orthometric
  quality     fixed, 60 epochs, pdop 1.5, 16 satellites
`;
const TYPE = '  keyed       antenna-type A1\n';

const findingsOf = (text: string) => inspect(openDocument('day.trib', text), NO_FILES).findings;
const found = (code: string, text: string) => findingsOf(text).find((finding) => finding.code === code);
const messageOf = (code: string, text: string) => found(code, text)?.message;

describe('a keyed height that a passing check does not bear out', () => {
  const agreeing = TYPE + check('OPEN', '08:25', 0);
  it('may be the note, where the check would have failed by it', () => {
    const message = messageOf('height/extension', day('1.283', agreeing));
    expect(message).toContain('250 mm too low');
    expect(message).toContain('checks of that time pass');
  });
  it('is what was keyed, where it is within the tolerance, so that the check says nothing of it', () => {
    const message = messageOf('position/keyed-differs', day('1.593', agreeing));
    expect(message).toContain('60 mm too high');
    expect(message).not.toContain('But');
  });
});

describe('a check that is off by what a keyed height is wrong by', () => {
  const codesUnder = (up: number) => {
    const text = day('1.473', TYPE + check('OPEN', '08:25', up));
    return found('position/keyed-differs', text)?.related.map(({ code }) => code);
  };
  it('surprises because of it, and hangs under it', () => {
    expect(codesUnder(-60)).toEqual(['check/surprising']);
  });
  it('is another surprise where it is off to the other side', () => {
    expect(codesUnder(60)).toEqual([]);
    expect(messageOf('check/surprising', day('1.473', TYPE + check('OPEN', '08:25', 60)))).toContain(
      'OPEN is 60 mm high',
    );
  });
});

describe('a check that failed before another height was keyed', () => {
  const related = (later: number) =>
    found(
      'height/extension',
      day(
        '1.283',
        `${TYPE}  keyed       antenna-height 1.533 m to arp at 09:00\n${check('OPEN', '08:25', -250)}${check('NEXT', '10:25', later)}`,
      ),
    )?.related.map(({ code, message }) => [code, /put right since/.test(message)]);
  it('was put right where a later one passes, and not where that fails as well', () => {
    expect(related(0)).toEqual([['check/fails', true]]);
    expect(related(-250)).toEqual([['check/fails', false]]);
  });
});

describe('a diagnosis', () => {
  it('says every thing to look at, whether it cannot be told apart or stands alone', () => {
    const subject = inspect(
      openDocument('day.trib', day('1.533', TYPE + check('OPEN', '08:25', -250))),
      NO_FILES,
    );
    const [diagnosis] = diagnosesOf(subject.session, subject.derivation);
    const [group] = diagnosis?.groups ?? [];
    const [first] = group?.explanations ?? [];
    if (!diagnosis || !group || !first) throw new Error('250 mm have an explanation');
    const sentences = (looks: readonly string[], explanations = [first]) =>
      toldDiagnosis({ ...diagnosis, groups: [{ explanations, looks, open: false }] }, subject).map(
        ({ message }) => message,
      );
    expect(sentences(['the tape'])[0]).toMatch(/ Look at the tape[.]$/);
    expect(sentences(['the tape', 'the pole', 'the log'])[0]).toMatch(
      / Look at the tape; the pole; and the log[.]$/,
    );
    expect(sentences(['the tape', 'the pole'], [first, first])[2]).toBe(
      'To tell them apart, look at the tape; and the pole.',
    );
  });
});

describe('an antenna type that was not keyed', () => {
  /** The receivers take what is 92 mm above the reference point for the reference point: the base seems to stand that much lower. */
  it('lowers what is measured by the height of the phase centre', () => {
    expect(messageOf('antenna/type', day('1.533', ''))).toContain('92 mm too low.');
  });
});

describe('a name that nothing has', () => {
  it('is told with what it should be the name of', () => {
    const text = day('1.533', TYPE).replace('with A1', 'with A7');
    expect(messageOf('syntax/unknown-name', text)).toMatch(
      /^Unknown antenna A7[.] .*[.] Did you mean A1[?]$/,
    );
  });
});
