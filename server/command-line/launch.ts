/** The file that is started: it says its version at once, and runs the program beside it with what was compiled before. */
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { join } from 'node:path';
import { Script } from 'node:vm';
import { isMainThread } from 'node:worker_threads';
import manifest from '../../package.json' with { type: 'json' };
import { cacheFolder } from './cache-folder.ts';
import { loadCompiled, saveCompiled } from './compiled.ts';

/** Of the program beside this file, put in by the build; so the digest of this file tells programs apart. */
declare const PROGRAM_DIGEST: string;

const words = process.argv.slice(2);
if (words.length === 1 && words[0] === '--version') process.stdout.write(`${manifest.version}\n`);
else run(join(__dirname, 'program.cjs'));

function run(path: string): void {
  // As every engine since Node 22 understands it; nothing is read or kept then.
  const folder = process.env['NODE_DISABLE_COMPILE_CACHE'] ? null : cacheFolder();
  const key = [PROGRAM_DIGEST, process.version, process.arch, process.versions.v8].join(' ');
  const known = folder === null ? null : loadCompiled(folder, key);
  // The build writes ASCII alone, which is read fastest so.
  const source = `(function (require, __filename, __dirname) {${readFileSync(path, 'latin1').replace(/^#!.*/, '')}\n})`;
  const script = new Script(source, { filename: path, ...(known ? { cachedData: known.data } : {}) });
  const commands = known && script.cachedDataRejected === false ? known.commands : [];
  const command = commandIn(words);
  if (folder !== null && isMainThread && !commands.includes(command))
    process.once('exit', () =>
      saveCompiled(folder, key, { commands: [...commands, command], data: script.createCachedData() }),
    );
  const main = script.runInThisContext() as (...given: unknown[]) => void;
  main(createRequire(path), path, __dirname);
}

/** What a word of the command line is about does not matter here, only that others run other functions. */
function commandIn([first = '']: readonly string[]): string {
  return /^[a-z]{1,12}$/.test(first) ? first : 'help';
}
