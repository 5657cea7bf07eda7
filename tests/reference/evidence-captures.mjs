/**
 * Fetches recorded instrument logs with decoded companions for the reference tests, into .cache/evidence/.
 *
 * They come from Debian's source package of the general position daemon (licence BSD-2-Clause), through the apt
 * sources that this machine already has: their source entries are switched on in a temporary copy only.
 * Run: node tests/reference/evidence-captures.mjs
 */
import { execFileSync } from 'node:child_process';
import {
  cpSync,
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

const sourcePackage = 'gpsd';
const wanted = ['rtcm3.log', 'rtcm3.bndm.log', 'rtcm3.2.log', 'nmea-rtk.log'];
const cache = new URL('../../.cache/evidence/', import.meta.url).pathname;

const work = mkdtempSync(join(tmpdir(), 'evidence-'));
try {
  fetchSource();
  mkdirSync(cache, { recursive: true });
  const archive = readdirSync(work).find((name) => name.includes('.orig.tar'));
  if (!archive) throw new Error('the source package has no archive');
  execFileSync('tar', ['xf', archive], { cwd: work });
  const root = readdirSync(work, { withFileTypes: true }).find(
    (entry) => entry.isDirectory() && entry.name !== 'apt',
  );
  if (!root) throw new Error('the archive is empty');
  const logs = join(work, root.name, 'test', 'daemon');
  for (const name of wanted.flatMap((log) => [log, `${log}.chk`]))
    cpSync(join(logs, name), join(cache, name));
  cpSync(join(work, root.name, 'COPYING'), join(cache, 'COPYING'));
  console.log(`Recorded logs are in ${cache}`);
} finally {
  rmSync(work, { recursive: true, force: true });
}

function fetchSource() {
  const parts = join(work, 'apt', 'parts');
  const lists = join(work, 'apt', 'lists');
  mkdirSync(parts, { recursive: true });
  mkdirSync(join(lists, 'partial'), { recursive: true });
  for (const file of aptSources()) {
    const text = readFileSync(file, 'utf8');
    const switched = text.replace(/^deb /gm, 'deb-src ').replace(/^Types:.*$/gm, 'Types: deb-src');
    writeFileSync(join(parts, file.split('/').at(-1) ?? ''), switched);
  }
  const options = [
    ['-o', 'Dir::Etc::sourcelist=/dev/null'],
    ['-o', `Dir::Etc::sourceparts=${parts}`],
    ['-o', `Dir::State::lists=${lists}`],
  ].flat();
  // One source that has no source packages must not stop the others.
  try {
    execFileSync('apt-get', [...options, '-qq', 'update'], { cwd: work, stdio: 'ignore' });
  } catch {
    console.log('Some package lists could not be read; trying with the others.');
  }
  execFileSync('apt-get', [...options, '-qq', 'source', '--download-only', sourcePackage], {
    cwd: work,
    stdio: 'ignore',
  });
}

function aptSources() {
  const directory = '/etc/apt/sources.list.d';
  const named = existsSync(directory) ? readdirSync(directory).map((name) => join(directory, name)) : [];
  return ['/etc/apt/sources.list', ...named].filter(
    (file) => existsSync(file) && /\.(list|sources)$/.test(file),
  );
}
