/**
 * The bugs that the fuzzer must find still fit the sources; `npm run fuzz:planted` plants each and looks whether it is
 * found. Where the code has moved from under one, it is planted again by hand and kept as `git diff -U1` prints it.
 */
import { spawnSync } from 'node:child_process';
import { readdirSync } from 'node:fs';
import { expect, it } from 'vitest';

const FOLDER = 'tests/fuzz/planted';
const patches = readdirSync(FOLDER);

it('there are ten of them', () => {
  expect(patches).toHaveLength(10);
});

it.each(patches)('%s applies', (patch) => {
  const { status, stderr } = spawnSync('git', ['apply', '--check', '-C0', `${FOLDER}/${patch}`], {
    encoding: 'utf8',
  });
  expect([status, stderr]).toEqual([0, '']);
});
