/** The simulator is a witness only as long as it shares nothing with the program: its own files import one another and nothing else. */
import { readFileSync, readdirSync } from 'node:fs';
import { describe, expect, it } from 'vitest';

const FOLDER = new URL('.', import.meta.url);
const sources = readdirSync(FOLDER).filter((name) => name.endsWith('.ts') && !name.endsWith('.test.ts'));

describe('independence', () => {
  it('finds the simulator', () => {
    expect(sources).toContain('receiver.ts');
  });

  it.each(sources)('%s imports only its neighbours', (name) => {
    const text = readFileSync(new URL(name, FOLDER), 'utf8');
    const imported = [...text.matchAll(/^import\b[^;]* from '([^']+)'/gm)].map((match) => match[1]);
    expect(imported.filter((path) => !/^\.\/[a-z-]+\.ts$/.test(path ?? ''))).toEqual([]);
    // No other way in: every import is one of those above.
    expect(text.match(/\bimport\b(?=[ ({'])/g)?.length ?? 0).toBe(imported.length);
    expect(text).not.toMatch(/^export [^=(]* from '/m);
  });
});
