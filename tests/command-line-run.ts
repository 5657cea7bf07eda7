/** Runs a command in this process and hands back what it printed, for tests of the command line. */
import { mkdirSync, mkdtempSync, realpathSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { runCommand } from '../server/command-line/program.ts';

export interface Ran {
  readonly status: number;
  readonly printed: string;
  readonly complained: string;
}

interface Circumstances {
  readonly input?: string;
  readonly colours?: boolean;
  readonly width?: number;
  readonly terminal?: boolean;
}

export async function tribrach(words: readonly string[], around: Circumstances = {}): Promise<Ran> {
  let [status, printed, complained] = [0, '', ''];
  await runCommand(words, {
    print: (text) => (printed += text),
    complain: (text) => (complained += text),
    readInput: () => Promise.resolve(new TextEncoder().encode(around.input ?? '')),
    exitWith: (wanted) => (status = wanted),
    terminal: around.terminal ?? false,
    colours: around.colours ?? false,
    width: around.width ?? 100,
    watched: false,
    program: null,
    cache: null,
  });
  return { status, printed, complained };
}

/** A folder with these files, gone after the test. */
export function folderWith(files: Readonly<Record<string, string | Uint8Array>>) {
  const folder = realpathSync(mkdtempSync(join(tmpdir(), 'tribrach-')));
  for (const [path, contents] of Object.entries(files)) {
    mkdirSync(dirname(join(folder, path)), { recursive: true });
    writeFileSync(join(folder, path), contents);
  }
  return {
    path: (inside = '') => join(folder, inside),
    remove: () => rmSync(folder, { recursive: true, force: true }),
  };
}
