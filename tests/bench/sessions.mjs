/** Session texts of any length for measuring: a day of many marks, setups and checks whose numbers agree with one another. */
import proj4 from 'proj4';

/** EPSG:3763 as the registry defines it. */
const grid =
  '+proj=tmerc +lat_0=39.6682583333333 +lon_0=-8.13310833333333 +k=1 +x_0=0 +y_0=0 +ellps=GRS80 +towgs84=0,0,0,0,0,0,0 +units=m';
const separation = 54.917;
const dayStart = 5 * 3600;
const dayEnd = 22 * 3600;

/** A session of exactly `lineCount` lines (at least 60), the same text for the same number. */
export function sessionOf(lineCount) {
  const blockLines = setupOf(1, 0, 0).length;
  const room = lineCount - head.length;
  const count = Math.floor(room / blockLines);
  if (count < 1) throw new Error(`a session of ${lineCount} lines holds no setup; ask for 60 or more`);
  const share = (dayEnd - dayStart) / count;
  const blocks = Array.from({ length: count }, (_, index) =>
    setupOf(index + 1, dayStart + index * share, dayStart + (index + 0.95) * share),
  );
  const lines = [...head, ...blocks.flat()];
  while (lines.length < lineCount) lines.push('# the day went on');
  return lines.join('\n') + '\n';
}

/** A JSON text of exactly `lineCount` lines with the same kind of content: names, numbers, short texts. */
export function jsonOf(lineCount) {
  const lines = ['['];
  for (let index = 1; lines.length < lineCount - 1; index += 1) {
    const mark = [
      '  {',
      `    "mark": "PM-${index}",`,
      `    "east": ${eastOf(index).toFixed(3)},`,
      `    "north": ${northOf(index).toFixed(3)},`,
      `    "height": ${heightOf(index).toFixed(3)},`,
      '    "found": "intact"',
      '  },',
    ];
    lines.push(...mark.slice(0, lineCount - 1 - lines.length));
  }
  return closed(lines).join('\n') + '\n';
}

const head = `job "North arm, a long day"
  date        2026-05-19
  clock       UTC+01:00
  observer    "R. Okafor"
  grid        EPSG:3763
  vertical    "harbour levelling datum"
  geoid       EGM96
  confidence  95 %
  tolerance   35 mm + 1 ppm horizontal, 50 mm + 1 ppm vertical

antenna A1 "choke ring, serial 0413"
  phase-centre 92 mm above arp
rover R1 "serial 2207"
  pole        2.000 m to arp
  geoid       EGM96
  site-calibration none
`.split('\n');

/** One base over one mark: its mark, a second mark, the setup, and a check after the start and before the end. */
function setupOf(index, from, until) {
  const taped = 1.2 + (index % 40) / 100;
  const offCentre = 0.048;
  const extension = 0.25;
  const arp = Math.sqrt(taped ** 2 - offCentre ** 2) + extension;
  const east = eastOf(index);
  const north = northOf(index);
  const height = heightOf(index);
  const at = (share) => timeOf(from + share * (until - from));
  const disturbed =
    index % 5 === 0 ? `event disturbance at ${at(0.5)} "a vehicle passed close to the tripod"` : '#';
  return [
    ...markOf(`PM-${index}`, east, north, height),
    ...markOf(`CK-${index}`, east + 400, north + 300, height + 1),
    `setup BASE-${index} on PM-${index} with A1 at ${at(0)} until ${at(1)}`,
    `  measured    ${taped.toFixed(3)} m to foot, 48 mm off centre, at ${at(0.02)}`,
    '  extension   250 mm',
    '  plummet     ± 1 mm',
    `  keyed       position ${geographic(east, north)}, height ${(height + separation).toFixed(3)} m ellipsoidal`,
    `  keyed       antenna-height ${arp.toFixed(3)} m to arp`,
    '  keyed       antenna-type A1',
    ...checkOf(`OPEN-${index}`, index, at(0.1), [east + 400, north + 300, height + 1]),
    disturbed,
    ...checkOf(`CLOSE-${index}`, index, at(0.9), [east + 400, north + 300, height + 1]),
    '',
  ];
}

function markOf(name, east, north, height) {
  return [
    `mark ${name} "brass bolt"`,
    `  position    ${east.toFixed(3)} m E, ${north.toFixed(3)} m N`,
    `  height      ${height.toFixed(3)} m orthometric`,
    `  separation  ${separation.toFixed(3)} m`,
    '  uncertainty 8 mm horizontal, 12 mm vertical',
    '  source      "harbour control register" 2026-04-02',
    '  found       intact',
  ];
}

function checkOf(name, index, time, [east, north, height]) {
  const noise = (salt) => (((index * 37 + salt * 11) % 13) - 6) / 1000;
  return [
    `check ${name} on CK-${index} at ${time} by R1`,
    `  observed    ${(east + noise(1)).toFixed(3)} m E, ${(north + noise(2)).toFixed(3)} m N, height ${(height + noise(3)).toFixed(3)} m orthometric`,
    '  quality     fixed, 60 epochs, pdop 1.5, 16 satellites',
  ];
}

function eastOf(index) {
  return -41203.118 + (index % 25) * 37.125;
}

function northOf(index) {
  return 164904.902 + Math.floor(index / 25) * 41.25;
}

function heightOf(index) {
  return 6.284 + (index % 17) * 0.133;
}

function geographic(east, north) {
  const [longitude, latitude] = proj4(grid, 'EPSG:4326', [east, north]);
  return `${sexagesimal(Math.abs(latitude))}N, ${sexagesimal(Math.abs(longitude))}W`;
}

function sexagesimal(degrees) {
  const units = Math.round(degrees * 3600e5);
  const whole = Math.floor(units / 3600e5);
  const minutes = Math.floor((units - whole * 3600e5) / 60e5);
  const seconds = (units - whole * 3600e5 - minutes * 60e5) / 1e5;
  return `${whole}°${String(minutes).padStart(2, '0')}'${seconds.toFixed(5).padStart(8, '0')}"`;
}

function timeOf(seconds) {
  const whole = Math.round(seconds);
  const parts = [Math.floor(whole / 3600), Math.floor(whole / 60) % 60, whole % 60];
  return parts.map((part) => String(part).padStart(2, '0')).join(':');
}

/** Ends the JSON list whatever line it was cut at. */
function closed(lines) {
  const last = lines.length - 1;
  const start = lines.lastIndexOf('  {');
  const body = lines.slice(0, start);
  const cut = lines.slice(start);
  if (cut.at(-1) === '  },') return [...body, ...cut.slice(0, -1), '  }', ']'];
  const filler = Array.from({ length: last - start + 1 }, () => '');
  body[body.length - 1] = '  }';
  return [...body, ...filler, ']'];
}
