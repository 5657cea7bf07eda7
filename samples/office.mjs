/**
 * Makes the repository of an invented harbour office: a shared marks file, sessions by year, and their history in git.
 * The same words make the same repository, commit for commit: node samples/office.mjs FOLDER [COUNT]
 */
import { execFileSync } from 'node:child_process';
import { existsSync, mkdirSync, writeFileSync } from 'node:fs';
import { dirname, join, resolve } from 'node:path';
import { fileURLToPath } from 'node:url';

const SITES = ['north arm', 'south arm', 'fuel jetty', 'slipway', 'pilot quay', 'outer mole', 'dry dock', 'lock gate'];
const OBSERVERS = ['R. Okafor', 'L. Brandt', 'M. Sato', 'I. Duarte'];

const MARKS = `# The marks, antennas and rovers of the office; a session brings them in with: use "../../marks.trib"
job "Harbour control"
  grid        EPSG:3763
  vertical    "harbour levelling datum"
  geoid       EGM96

mark PM-14 "brass bolt, pier deck"
  position    -41203.118 m E, 164904.902 m N
  height      6.284 m orthometric
  separation  54.917 m
  uncertainty 8 mm horizontal, 12 mm vertical
  source      "harbour control register" 2024-01-08
mark PM-09 "bolt, root of the north arm"
  position    -40311.882 m E, 165377.404 m N
  height      5.196 m orthometric
  separation  54.915 m
  uncertainty 8 mm horizontal, 12 mm vertical
  source      "harbour control register" 2024-01-08

antenna A1 "choke ring, serial 0413"
  phase-centre 92 mm above arp
rover R1 "serial 2207"
  pole        2.000 m to arp
  geoid       EGM96
  site-calibration none
`;

/** What was wrong in the first version of every so-manieth day, and was mended by a later commit. */
const SLIPS = [
  (text) => text.replace(/(antenna-height \d\.)(\d)(\d)/, '$1$3$2'),
  (text) => text.replace('height 61.201 m ellipsoidal', 'height 6.284 m ellipsoidal'),
  (text) => text.replace(/(measured {4}\d\.\d{3}) m/, '$1'),
];
const SLIP_EVERY = 12;

export function makeOffice(folder, count = 200) {
  if (existsSync(join(folder, '.git'))) throw new Error(`${folder} is a repository already`);
  mkdirSync(folder, { recursive: true });
  const git = gitIn(folder);
  git(at(-1), 'init', '-q', '-b', 'main');
  put(folder, 'marks.trib', MARKS);
  put(folder, '.gitattributes', '*.trib diff=tribrach\n');
  commit('Add the marks of the harbour', at(-1));
  const slipped = [];
  for (let index = 0; index < count; index++) {
    const text = sessionOf(index);
    const isSlipped = index % SLIP_EVERY === SLIP_EVERY - 1;
    put(folder, pathOf(index), isSlipped ? SLIPS[slipped.length % SLIPS.length](text) : text);
    commit(`Note ${titleOf(index)}`, at(index));
    if (isSlipped) slipped.push(index);
    const mended = slipped.find((one) => one === index - 3);
    if (mended === undefined) continue;
    put(folder, pathOf(mended), sessionOf(mended));
    commit(`Mend ${titleOf(mended)}`, at(index, 17));
  }

  function commit(message, when) {
    git(when, 'add', '--all');
    git(when, '-c', `user.name=${OBSERVERS[0]}`, '-c', 'user.email=office@harbour.example', 'commit', '-qm', message);
  }
  // Days whose slip nobody has mended yet.
  return slipped.filter((index) => index + 3 >= count).map(pathOf);
}

/** A clean day, with heights and noise of its own. */
function sessionOf(index) {
  const height = 1300 + ((index * 137) % 500);
  const near = (value, spread, salt) => (value + (((index * 31 + salt * 17) % (2 * spread + 1)) - spread) / 1000).toFixed(3);
  const observed = (salt) =>
    `${near(-40311.882, 6, salt)} m E, ${near(165377.404, 6, salt + 1)} m N, height ${near(5.196, 8, salt + 2)} m orthometric`;
  const metres = (millimetres) => `${(millimetres / 1000).toFixed(3)} m`;
  return `use "../../marks.trib"
job "${titleOf(index)}"
  date        ${dayOf(index)}
  clock       UTC
  observer    "${OBSERVERS[index % OBSERVERS.length]}"
  grid        EPSG:3763
  vertical    "harbour levelling datum"
  geoid       EGM96
  confidence  95 %
  tolerance   35 mm + 1 ppm horizontal, 50 mm + 1 ppm vertical

setup BASE on PM-14 with A1 at 07:50 until 15:40
  measured    ${metres(height)} to arp, at 07:52
  measured    ${metres(height - 1)} to arp, at 15:36
  autonomous  41°09'08.2"N, 8°37'26.3"W, height 63 m ellipsoidal
  keyed       position 41°09'08.18286"N, 8°37'26.27078"W, height 61.201 m ellipsoidal
  keyed       antenna-height ${metres(height)} to arp
  keyed       antenna-type A1

check OPEN on PM-09 at 08:25 by R1
  observed    ${observed(1)}
  quality     fixed, 60 epochs, pdop 1.5, 16 satellites
check NOON on PM-09 at 11:50 by R1
  observed    ${observed(5)}
  quality     fixed, 60 epochs, pdop 1.7, 17 satellites
check CLOSE on PM-09 at 15:25 by R1
  observed    ${observed(9)}
  quality     fixed, 60 epochs, pdop 1.6, 17 satellites

hazard "vehicles on the quay"
  control     "cones at 15 m, lookout while levelling"
`;
}

const titleOf = (index) => `${SITES[index % SITES.length]}, day ${index + 1}`;
export const pathOf = (index) =>
  `${dayOf(index).slice(0, 4)}/${SITES[index % SITES.length].replaceAll(' ', '-')}/${dayOf(index)}.trib`;
const FIRST = Date.UTC(2024, 0, 15);
const DAY = 24 * 60 * 60 * 1000;
const dayOf = (index) => new Date(FIRST + index * 3 * DAY).toISOString().slice(0, 10);
const at = (index, hour = 16) => new Date(FIRST + index * 3 * DAY + hour * 60 * 60 * 1000).toISOString();

function put(folder, path, text) {
  mkdirSync(dirname(join(folder, path)), { recursive: true });
  writeFileSync(join(folder, path), text);
}

/** Nothing of the user's own configuration, so that every machine makes the same commits. */
const gitIn =
  (folder) =>
  (when, ...words) =>
    execFileSync('git', words, {
      cwd: folder,
      stdio: ['ignore', 'ignore', 'pipe'],
      env: {
        PATH: process.env.PATH,
        GIT_CONFIG_GLOBAL: '/dev/null',
        GIT_CONFIG_NOSYSTEM: '1',
        GIT_AUTHOR_DATE: when,
        GIT_COMMITTER_DATE: when,
      },
    });

if (process.argv[1] && resolve(process.argv[1]) === fileURLToPath(import.meta.url)) {
  const [folder, count] = process.argv.slice(2);
  if (folder === undefined) throw new Error('say where: node samples/office.mjs FOLDER [COUNT]');
  const left = makeOffice(folder, count === undefined ? undefined : Number(count));
  console.log(`made ${folder}; not mended yet: ${left.join(', ') || 'nothing'}`);
}
