/** Calls the independent tools that some machines have installed, and says plainly where they are missing. */
import { spawn, spawnSync } from 'node:child_process';

export type Tool = 'cs2cs' | 'cct' | 'projinfo' | 'GeodSolve' | 'CartConvert' | 'GeoidEval';

export function isInstalled(tool: Tool): boolean {
  const found =
    spawnSync(tool, [tool.startsWith('G') || tool.startsWith('C') ? '--version' : '--help']).error ===
    undefined;
  if (!found) say(`NOT COMPARED: the independent tool ${tool} is not installed on this machine.`);
  return found;
}

/** To the test run's output, whatever its reporter. */
export const say = (sentence: string) => process.stderr.write(`${sentence}\n`);

/** The lines that a tool answers to lines of input. */
export function ask(
  tool: Tool,
  options: readonly string[],
  lines: readonly string[],
): Promise<readonly string[]> {
  return new Promise((resolve, reject) => {
    const child = spawn(tool, options);
    let answer = '';
    child.stdout.on('data', (part: Buffer) => (answer += part.toString('utf8')));
    child.stdin.on('error', () => undefined);
    child.on('error', reject);
    child.on('close', () => resolve(answer.split('\n').filter((line) => line.trim() !== '')));
    child.stdin.end(lines.join('\n') + '\n');
  });
}

/** A repeatable stream of numbers from 0 to 1 (mulberry32). */
export function repeatable(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296;
  };
}
