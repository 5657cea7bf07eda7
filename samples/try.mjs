/** Shows the main job on a day with a slip: what the base should have been told, what was found, and what to do. */
import { spawnSync } from 'node:child_process';

const session = 'samples/broken/height-wrong-surface.trib';

for (const words of [
  ['derive', session, '--only', 'setup/BASE'],
  ['check', session],
  ['tell', session],
]) {
  console.log(`\n$ tribrach ${words.join(' ')}\n`);
  const { status } = spawnSync(process.execPath, ['dist/tribrach.cjs', ...words], { stdio: 'inherit' });
  // Status 1 says that something was found, which is what this session is for.
  if (status !== 0 && status !== 1) process.exit(2);
}
