import { configDefaults, defineConfig, type TestProjectConfiguration } from 'vitest/config';

const ALL = '{grammar,server,client,tests}/**/*.test.ts';

/** Tests that wait for processes, browsers and threads, or try so much that they take seconds each, by what they do. */
const LONG: Readonly<Record<string, readonly string[]>> = {
  browser: ['tests/browser/**/*.test.ts'],
  fuzz: ['tests/fuzz/**/*.test.ts', 'tests/mangled.test.ts', 'tests/typed-sessions.test.ts'],
  growth: ['**/growth.test.ts', 'tests/long-drawings.test.ts'],
  // Whole programs are started, loaded, killed, and their files looked at.
  process: [
    'tests/{archive,automation,faults,installed,shards,guarded-writes,capture,compare,never-fetched,report,seal,start,supply,which-files,whole-writes}.test.ts',
    'tests/{command-line,points,protocol,server}*.test.ts',
    'tests/readme-editors.test.ts',
    'client/package.test.ts',
  ],
  // Everything is tried on every sample, every simulated day or every published figure.
  sweep: [
    'tests/{diagnosis,reference,simulation}/**/*.test.ts',
    'tests/{fixes,incremental,sample-laws}.test.ts',
    'server/features/completion/completion.test.ts',
    'tests/repair.test.ts',
  ],
};

const outside = ['tests/editors/**', ...configDefaults.exclude];
const long = Object.entries(LONG).map(([name, include]): TestProjectConfiguration => ({
  extends: true,
  test: { name, include: [...include], exclude: outside },
}));

export default defineConfig({
  test: {
    testTimeout: 120_000,
    // Before some tests a program is built or a browser started, which a busy machine makes slow.
    hookTimeout: 120_000,
    maxWorkers: '100%',
    projects: [
      {
        extends: true,
        test: {
          name: 'quick',
          include: [ALL],
          exclude: [...outside, ...Object.values(LONG).flat()],
          // Nothing here changes what it imports, so that one import serves all.
          isolate: false,
        },
      },
      ...long,
    ],
  },
});
