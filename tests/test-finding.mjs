/** `npm run test-finding TOPIC-SLIP`: the tests of one kind of finding: its page, its sample, and its own test where it has one. */
import { spawnSync } from 'node:child_process';
import { existsSync } from 'node:fs';

const [, topic, slip] = /^([a-z]+)[-/]([a-z][a-z-]*)$/.exec(process.argv[2] ?? '') ?? [];
if (!topic || !existsSync(`server/findings/${topic}/${slip}.md`)) {
  console.error('test-finding: say which: npm run test-finding TOPIC-SLIP, as in height-extension');
  process.exit(2);
}
const own = `server/findings/${topic}/${slip}.test.ts`;
const files = [
  'tests/pages.test.ts',
  'tests/samples.test.ts',
  'tests/rooms.test.ts',
  ...(existsSync(own) ? [own] : []),
];
const named = `${topic}[/-]${slip}|the rooms|every finding`;
const { status } = spawnSync('npx', ['vitest', 'run', '--project', 'quick', ...files, '-t', named], {
  stdio: 'inherit',
});
process.exit(status ?? 1);
