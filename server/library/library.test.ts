/** The library answers what the command line answers, reads no file that was not handed over, and takes paths as any system spells them. */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { tribrach } from '../../tests/command-line-run.ts';
import { inspect } from './library.ts';

const MARKS = 'mark PM-14\n  position 41.1 deg N, 8.7 deg W\n  height 61.2 m ellipsoidal\n';
const DAY = 'use "../marks.trib"\njob "Quay"\n  date 2026-05-19\nsetup BASE on PM-14 at 07:50\n';

/** The files beside the samples, as a caller hands them over. */
const SAMPLES = Object.fromEntries(
  ['pickup.csv', 'marks.trib', 'antennas.atx', 'grids/region.gtx'].map(
    (name) => [`samples/${name}`, readFileSync(`samples/${name}`)] as const,
  ),
);

describe('inspect', () => {
  it.each(['samples/broken/height-extension.trib', 'samples/breakwater.trib', 'samples/two-setups.trib'])(
    'says of %s what check and derive say',
    async (path) => {
      const { files, values } = inspect(readFileSync(path, 'utf8'), { path, files: SAMPLES });
      const json = async (command: string) =>
        JSON.parse((await tribrach([command, path, '--format', 'json'])).printed) as {
          files: { findings?: unknown; values?: unknown }[];
        };
      expect(files[0]?.findings).toEqual((await json('check')).files[0]?.findings);
      expect(values).toEqual((await json('derive')).files[0]?.values);
    },
  );
  it('draws on files that were handed over, as text or bytes, and misses those that were not', () => {
    const known = (files: Record<string, string | Uint8Array>) =>
      inspect(DAY, { path: 'jobs/day.trib', files }).values.filter(
        ({ id, value }) => id.startsWith('mark/PM-14/') && value !== null,
      ).length;
    expect(known({})).toBe(0);
    const all = known({ 'marks.trib': MARKS });
    expect(all).toBeGreaterThan(0);
    expect(known({ 'marks.trib': new TextEncoder().encode(MARKS) })).toBe(all);
    expect(known({ './jobs\\..\\marks.trib': MARKS })).toBe(all);
  });
  it('answers the same whatever ends the lines, and fixes end them alike', () => {
    const text = readFileSync('samples/broken/height-extension.trib', 'utf8');
    const [one, other] = [text, text.replaceAll('\n', '\r\n')].map((each) => inspect(each));
    // What a fix writes ends its lines as the session does.
    const plain = (answer: unknown) => JSON.stringify(answer).replaceAll('\\r\\n', '\\n');
    expect(plain(other?.files)).toBe(plain(one?.files));
    expect(other?.verdict).toEqual(one?.verdict);
  });
  it('counts points by class, and answers on anything at all', () => {
    const { points } = inspect(readFileSync('samples/recorded.trib', 'utf8'), {
      path: 'samples/recorded.trib',
    });
    expect(Array.isArray(points)).toBe(true);
    for (const text of ['', '\0', '\ufeff', 'setup', '{"a":1}', '\ud800'])
      expect(inspect(text).interface).toBe(1);
  });
});
