/** Every JSON output is described by a published schema (JSON Schema 2020-12) that allows no field which is not described. */
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { Ajv2020 } from 'ajv/dist/2020.js';
import { describe, expect, it } from 'vitest';
import { inspect } from '../server/library/library.ts';
import { tribrach } from './command-line-run.ts';

const schemaOf = (name: string): object =>
  JSON.parse(readFileSync(`schemas/${name}.schema.json`, 'utf8')) as object;
const ajv = new Ajv2020({ strict: true, allErrors: true, allowUnionTypes: true });
const schemas = Object.fromEntries(
  readdirSync('schemas').map((file) => {
    const name = file.replace('.schema.json', '');
    return [name, ajv.compile(schemaOf(name))] as const;
  }),
);
const problems = (name: string, data: unknown) =>
  schemas[name]?.(data) === true ? [] : (schemas[name]?.errors ?? ['there is no such schema']);

const sessions = readdirSync('samples', { recursive: true, encoding: 'utf8' })
  .filter((path) => path.endsWith('.trib'))
  .map((path) => `samples/${path.replaceAll('\\', '/')}`);
const printed = async (...words: string[]): Promise<unknown> =>
  JSON.parse((await tribrach([...words, '--format', 'json'])).printed);

it('no schema allows what it does not describe', () => {
  const open: string[] = [];
  const look = (node: unknown, path: string) => {
    if (typeof node !== 'object' || node === null) return;
    if ('type' in node && node.type === 'object' && !('additionalProperties' in node)) open.push(path);
    if ('additionalProperties' in node && node.additionalProperties === true) open.push(path);
    for (const [key, value] of Object.entries(node)) look(value, `${path}/${key}`);
  };
  for (const name of Object.keys(schemas)) look(schemaOf(name), name);
  expect(Object.keys(schemas).length).toBeGreaterThan(4);
  expect(open).toEqual([]);
});

describe('all samples', () => {
  it.each(['check', 'derive'])('by %s', async (command) => {
    expect(sessions.length).toBeGreaterThan(50);
    expect(problems(command, await printed(command, 'samples'))).toEqual([]);
  });
  it('by the library', () => {
    for (const path of sessions)
      expect([path, problems('library', inspect(readFileSync(path, 'utf8'), { path }))]).toEqual([path, []]);
  });
  it('by compare, each with the one before it and with nothing', async () => {
    for (const [index, path] of sessions.entries())
      expect([
        path,
        problems('compare', await printed('compare', sessions[index - 1] ?? path, path)),
      ]).toEqual([path, []]);
  });
  it('by capture, each recording', async () => {
    const folder = 'samples/recordings';
    const files = existsSync(folder) ? readdirSync(folder).filter((name) => name.endsWith('.rtcm3')) : [];
    expect(files.length).toBeGreaterThan(0);
    for (const name of files)
      expect([name, problems('capture', await printed('capture', `${folder}/${name}`))]).toEqual([name, []]);
  });
});

/** Every field is left out, given as another type, and joined by a stranger: a schema that lets that pass describes nothing. */
describe('a spoiled output is refused', () => {
  const outputs: readonly (readonly [string, () => Promise<unknown>])[] = [
    ['check', () => printed('check', 'samples/broken/height-extension.trib')],
    ['derive', () => printed('derive', 'samples/breakwater.trib')],
    ['compare', () => printed('compare', 'samples/breakwater.trib', 'samples/broken/height-extension.trib')],
    ['library', () => Promise.resolve(inspect(readFileSync('samples/broken/height-extension.trib', 'utf8')))],
    ['capture', () => printed('capture', 'samples/recordings/base.rtcm3')],
  ];
  it.each(outputs)('of %s', async (name, make) => {
    const data = await make();
    expect(problems(name, data)).toEqual([]);
    let tried = 0;
    for (const at of objectsIn(data, '')) {
      for (const [what, spoil] of spoils(at.value)) {
        const undo = spoil();
        tried += 1;
        expect([at.path, what, problems(name, data).length > 0]).toEqual([at.path, what, true]);
        undo();
      }
    }
    expect(tried).toBeGreaterThan(20);
    expect(problems(name, data)).toEqual([]);
  });
});

type Fields = Record<string, unknown>;

/** One object of each place in the schema is enough: the first of a list. Tables by name have no fields of their own. */
function objectsIn(data: unknown, path: string): { readonly path: string; readonly value: Fields }[] {
  if (Array.isArray(data)) return data.slice(0, 1).flatMap((one) => objectsIn(one, `${path}[]`));
  if (typeof data !== 'object' || data === null) return [];
  const own = /\/(?:classes|biases\[\]\/value\/biases)$/.test(path) ? [] : [{ path, value: data as Fields }];
  return [...own, ...Object.entries(data).flatMap(([key, value]) => objectsIn(value, `${path}/${key}`))];
}

function spoils(value: Fields): (readonly [string, () => () => void])[] {
  const put = (key: string, spoiled: unknown) => () => {
    const before = value[key];
    value[key] = spoiled;
    return () => {
      if (before === undefined) Reflect.deleteProperty(value, key);
      else value[key] = before;
    };
  };
  return [
    ['a stranger', put('stranger', 1)],
    ...Object.keys(value).map((key) => [`${key} of another type`, put(key, { odd: true })] as const),
    ...Object.keys(value).map((key) => [`${key} misspelt`, misspelt(key)] as const),
  ];

  function misspelt(key: string) {
    return () => {
      const entries = Object.entries(value);
      Reflect.deleteProperty(value, key);
      value[`${key}_`] = 1;
      return () => {
        for (const known of Object.keys(value)) Reflect.deleteProperty(value, known);
        Object.assign(value, Object.fromEntries(entries));
      };
    };
  }
}
