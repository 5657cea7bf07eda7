/** The findings of every broken sample, held to the published schema of SARIF 2.1.0. */
import { readdirSync, readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import Ajv from 'ajv-draft-04';
import addFormats from 'ajv-formats';
import { describe, expect, it } from 'vitest';
import { openDocument } from '../grammar/document.ts';
import { inspect } from '../server/inspect.ts';
import { sarifLog, sarifResults } from '../server/record/machine/findings-sarif.ts';
import { NO_FILES } from '../server/session/files.ts';

const folder = new URL('../samples/broken/', import.meta.url);
const inspections = readdirSync(folder)
  .filter((name) => name.endsWith('.trib'))
  .map((name) =>
    inspect(openDocument(`samples/broken/${name}`, readFileSync(new URL(name, folder), 'utf8')), NO_FILES),
  );

/** OASIS SARIF 2.1.0, as a library of schemas carries it; its drafts' meta-schema is the older one. */
const schema = JSON.parse(
  readFileSync(
    createRequire(import.meta.url).resolve('@microsoft/jest-sarif/lib/schemas/sarif-2.1.0-rtm.5.json'),
    'utf8',
  ),
);
const ajv = new Ajv({ strict: false, allErrors: true, unicodeRegExp: false });
addFormats(ajv);
const validate = ajv.compile(schema);

interface Log {
  readonly runs: readonly {
    readonly results: readonly { ruleId: string; ruleIndex: number; level: string }[];
    readonly tool: { driver: { rules: readonly { id: string }[] } };
  }[];
}

describe('findings as SARIF', () => {
  const log = sarifLog(inspections.flatMap(sarifResults), '0.0.0') as unknown as Log;

  it('are valid by the schema', () => {
    expect(validate(log), JSON.stringify(validate.errors?.slice(0, 5), null, 2)).toBe(true);
  });

  it('are all there, each with its rule', () => {
    const [run] = log.runs;
    const count = inspections.reduce((sum, { findings }) => sum + findings.length, 0);
    expect(count).toBeGreaterThan(20);
    expect(run?.results).toHaveLength(count);
    for (const { ruleId, ruleIndex } of run?.results ?? [])
      expect(run?.tool.driver.rules[ruleIndex]?.id).toBe(ruleId);
  });

  it('fail the schema when they are spoilt', () => {
    expect(validate({ ...log, version: '2.0' })).toBe(false);
  });
});
