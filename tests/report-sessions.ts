/** Sessions that a report must draw well: setups low and high, checks few and many, names that want to be markup. */
import { readFileSync } from 'node:fs';
import { openDocument } from '../grammar/document.ts';
import { inspect, type Inspection } from '../server/inspect.ts';
import { filesOnDisk } from './samples.ts';

export const inspectText = (text: string, path = 'samples/day.trib'): Inspection =>
  inspect(openDocument(path, text), filesOnDisk());

const clean = readFileSync('samples/breakwater.trib', 'utf8');
export const cleanDay = () => inspectText(clean);
export const lowDay = () => inspectText(withHeights('0.784', '2.572', '0.783', '1.033'));
export const highDay = () => inspectText(withHeights('3.784', '12.414', '3.783', '4.034'));
/** The extension was left out, and every check shows it. */
export const extensionDay = () => inspectText(readFileSync(EXTENSION, 'utf8'), EXTENSION);
const EXTENSION = 'samples/broken/height-extension.trib';
/** The same slip in the notes alone: what was keyed differs, and the checks agree all the same. */
export const slipInTheNotes = () =>
  inspectText(clean.replace('antenna-height 1.533 m', 'antenna-height 1.283 m'));

function withHeights(first: string, second: string, last: string, keyed: string): string {
  return clean
    .replace('1.284 m to foot', `${first} m to foot`)
    .replace('4.21 ft to foot', `${second} ft to foot`)
    .replace('1.283 m to foot', `${last} m to foot`)
    .replace('antenna-height 1.533 m', `antenna-height ${keyed} m`);
}

const MARKS = `job "A day"
  date        2026-05-20
  clock       UTC+01:00
  grid        EPSG:3763
  tolerance   35 mm horizontal, 50 mm vertical
mark BASE-MARK
  position    -41203.118 m E, 164904.902 m N
  height      61.201 m ellipsoidal
  uncertainty 8 mm horizontal, 12 mm vertical
mark FAR
  position    -21203.118 m E, 164904.902 m N
  height      60.000 m ellipsoidal
  uncertainty 8 mm horizontal, 12 mm vertical
mark NEAR
  position    -41201.118 m E, 164904.902 m N
  height      61.000 m ellipsoidal
  uncertainty 8 mm horizontal, 12 mm vertical
antenna A1
  phase-centre 92 mm above arp
setup BASE on BASE-MARK with A1 at 07:50 until 15:40
  measured    1.500 m to arp, at 07:52
  keyed       position -41203.118 m E, 164904.902 m N, height 61.201 m ellipsoidal
  keyed       antenna-height 1.500 m to arp
`;
const checkAt = (name: string, on: string, time: string, east: string, north: string, height: string) =>
  `check ${name} on ${on} at ${time}\n  observed    ${east} m E, ${north} m N, height ${height} m ellipsoidal\n`;

export const withoutChecks = () => inspectText(MARKS);
/** Open, and last heard of at such a time that the strip ends with a whole hour. */
export const hourAtTheEnd = () =>
  inspectText(
    MARKS.replace(' until 15:40', '') + checkAt('LAST', 'FAR', '12:22', '-21203.108', '164904.912', '60.020'),
  );
export const oneCheck = () =>
  inspectText(MARKS + checkAt('ONLY', 'FAR', '08:25', '-21203.108', '164904.912', '60.020'));
/** Half an hour apart, at two marks 2 m and 20 km away; one is a third of a metre too high. */
export const twelveChecks = () =>
  inspectText(
    MARKS +
      Array.from({ length: 12 }, (_, index) =>
        checkAt(
          `CHECK-NUMBER-${index + 1}`,
          index % 2 === 0 ? 'FAR' : 'NEAR',
          `${String(8 + Math.floor(index / 2)).padStart(2, '0')}:${index % 2 === 0 ? '05' : '35'}`,
          ((index % 2 === 0 ? -21203.118 : -41201.118) + 0.004 * (index - 6)).toFixed(3),
          (164904.902 + 0.003 * (6 - index)).toFixed(3),
          ((index % 2 === 0 ? 60 : 61) + (index === 7 ? 0.33 : 0.004 * (index - 6))).toFixed(3),
        ),
      ).join(''),
  );
/** The base stands for two days and two hours, and is checked each morning. */
export const twoDays = () =>
  inspectText(
    MARKS.replace('until 15:40', 'until 2026-05-22 10:00') +
      checkAt('FIRST', 'NEAR', '08:00', '-41201.108', '164904.912', '61.020') +
      checkAt('SECOND', 'NEAR', '2026-05-21 08:00', '-41201.108', '164904.912', '61.020') +
      checkAt('THIRD', 'NEAR', '2026-05-22 08:00', '-41201.108', '164904.912', '61.020'),
  );
export const withoutPositions = () =>
  inspectText('mark M1\nmark M2\nsetup S on M1 at 08:00\ncheck C on M2 at 09:00\n  observed ? m E, ? m N\n');
/** A session that was only begun: every answer is still open. */
export const withoutAnswers = () =>
  inspectText(
    'job "?"\n  date ?\n  clock ?\n  grid ?\n  tolerance ? horizontal, ? vertical\nmark M1\n  position ? m E, ? m N\nmark M2\nantenna A1\nsetup S on M1 with A1 at ?\n  measured ? to arp\n  keyed position ? m E, ? m N, height ? m ellipsoidal\n  keyed antenna-height ? m to arp\ncheck C on M2 at ?\n  observed ? m E, ? m N\n',
  );
export const nothingAtAll = () => inspectText('');

/** The longest name that somebody may write down, and everything that wants to be markup, in every place of a name or text. */
export const hostileDay = () =>
  inspectText(
    [
      'job "Q><script>alert(1)</script><img src=x onerror=alert(1)></title></style><script>"',
      '  date 2026-05-20',
      '  observer "</style><script>alert(2)</script>"',
      '  grid EPSG:3763',
      '  vertical "<base href=//example.invalid>"',
      '  tolerance 35 mm horizontal, 50 mm vertical',
      'mark "<svg/onload=alert(1)>" "javascript:alert(1) \' onmouseover=\'alert(1)"',
      '  position -41203.118 m E, 164904.902 m N',
      '  height 61.2 m ellipsoidal',
      '  source "<a href=javascript:alert(1)>" 2026-04-02',
      `mark "${LONG_NAME}"`,
      '  position -41201.118 m E, 164904.902 m N',
      '  height 61.2 m ellipsoidal',
      'antenna "Q onclick=Q" "<math><mtext></table><style><img src onerror=alert(1)>"',
      '  phase-centre 92 mm above arp',
      'rover "<x>"',
      'setup "Q><script>" on "<svg/onload=alert(1)>" with "Q onclick=Q" at 07:50',
      '  measured 1.5 m to arp, at 07:52, by "<script>"',
      '  keyed position -41203.118 m E, 164904.902 m N, height 61.2 m ellipsoidal',
      '  keyed antenna-height 1500 m to arp',
      '  keyed antenna-type "<script>"',
      'radio "<script>"',
      '  carrier 461.0375 MHz',
      '  licence "<script>"',
      `check "<b onclick=x>" on "${LONG_NAME}" at 08:00 by "<x>"`,
      '  observed -41201.100 m E, 164904.9 m N, height 61.2 m ellipsoidal',
      'check "]]>--><!--" on "no such mark <i>" at 08:01',
      '  observed -21201.100 m E, 164905.9 m N, height 61.2 m ellipsoidal',
      'event disturbance at 08:02 "<script>alert(3)</script>"',
      'event "<script>" at 08:03 "x"',
      'point "<p1>" at 08:30',
      '  observed -41000.1 m E, 164905.9 m N, height 61.2 m ellipsoidal',
      'hazard "<iframe src=//example.invalid>"',
      '  control "<a href=javascript:x>"',
      'note "<script>alert(4)</script> [link](javascript:x) @everyone #1 `code` |cell|"',
      'correction "<script>" on "Q><script>" at 09:00',
      '  by "<script>"',
      '  because "<script>"',
      'review "<script>" 2026-05-21 seal "<script>"',
      '<script>alert(5)</script>',
    ]
      .join('\n')
      .replaceAll('Q', '""'),
    'samples/<script>alert(6)<&script>.trib',
  );
const LONG_NAME =
  'A mark that somebody has written down in full with its parish, county, kilometre post and the name of the field, twice over, and once more for the reviewer';
