/** `tribrach explain`: what the code of a finding, or the class of a day, means and what to do about it. */
import type { Command } from 'commander';
import { CLASS_MEANINGS } from '../derive/trust/class-meanings.ts';
import { EXPLANATIONS } from '../findings/explanations.ts';
import { CannotRun, type Io } from './io.ts';
import { wrapped } from './terminal-text.ts';

export function register(program: Command, io: Io): void {
  program
    .command('explain')
    .description(
      'say what the code of a finding or the verdict of a day means, and what to do; alone, list them all',
    )
    .argument('[code]', 'such as height/extension, or not-closed')
    .action((code: string | undefined) =>
      io.print(code === undefined ? listed(io.width) : explained(code, io.width)),
    );
}

const CLASSES = Object.entries(CLASS_MEANINGS);

function explained(code: string, width: number): string {
  const asked = code.toLowerCase().replaceAll(' ', '-');
  const meaning = CLASSES.find(([name]) => name === asked)?.[1];
  if (meaning !== undefined) return `${asked}\n\n${wrapped(meaning, width, '  ')}\n`;
  const page = EXPLANATIONS[asked];
  if (!page)
    throw new CannotRun([`no finding or verdict is called ${code}; tribrach explain lists them all`]);
  const parts = [
    ['What it means', page.means],
    ['Why it hurts', page.hurts],
    ['What to do', page.remedy],
  ];
  return `${asked}\n\n${parts.map(([head = '', said = '']) => `  ${head}\n${wrapped(said, width, '    ')}\n`).join('\n')}`;
}

function listed(width: number): string {
  const rows: [string, string][] = [
    ...CLASSES,
    ...Object.entries(EXPLANATIONS).map(([code, { means }]): [string, string] => [
      code,
      firstSentence(means),
    ]),
  ];
  const room = Math.max(...rows.map(([code]) => code.length)) + 2;
  const lines = rows.map(([code, said]) => code.padEnd(room) + cut(said, Math.max(20, width - room)));
  return `${lines.join('\n')}\n`;
}

const firstSentence = (said: string) => said.split(/(?<=[.]) (?=\p{Lu})/u)[0] ?? said;

const cut = (text: string, width: number) => (text.length <= width ? text : `${text.slice(0, width - 1)}…`);
