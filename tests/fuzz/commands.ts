/** The command line: whatever the words and the files, an answer or a sentence, never a fault, and no input is touched. */
import fc from 'fast-check';
import { readFileSync } from 'node:fs';
import { folderWith, tribrach } from '../command-line-run.ts';
import { harmed, bytesOf } from './bytes.ts';
import { wildStream } from './evidence.ts';
import { sessionText } from './sessions.ts';
import { law, target } from './target.ts';

const session = fc.oneof(
  { weight: 4, arbitrary: sessionText.map(bytesOf) },
  { weight: 1, arbitrary: sessionText.chain((text) => harmed([bytesOf(text)])) },
);
const words = fc.oneof(
  fc.constantFrom(
    ...['check day.trib', 'check . --format json', 'check day.trib --require held', 'check . --format sarif'],
    ...['derive day.trib', 'derive day.trib --format json', 'derive day.trib --only mark', 'tell day.trib'],
    ...['report day.trib', 'report day.trib --format markdown', 'format day.trib', 'format . --check'],
    ...[
      'compare day.trib other.trib',
      'compare other.trib day.trib --format markdown',
      'seal day.trib --by X',
    ],
    ...[
      'points day.trib',
      'points other.trib --out out',
      'capture other.trib',
      'capture day.trib --format json',
      'capture base.rtcm3',
      'capture base.rtcm3 --format json',
    ],
    ...[
      'marks day.trib --columns name,east,north',
      'check day.trib --root ..',
      'derive day.trib --explain x',
    ],
  ),
  fc
    .array(
      fc.constantFrom(
        ...[
          'check',
          'derive',
          'tell',
          'format',
          'points',
          'seal',
          'marks',
          'compare',
          'capture',
          'report',
          'new',
        ],
        ...[
          '--format',
          'json',
          '--only',
          '--explain',
          '--root',
          '--out',
          '__proto__',
          '-',
          '--',
          '',
          '.',
          '/dev/zero',
        ],
        ...[
          '--by',
          '--date',
          '2026-13-40',
          '--columns',
          'name',
          '--skip',
          '-1',
          'day.trib',
          'other.trib',
          '\0',
        ],
      ),
      { maxLength: 5 },
    )
    .filter((some) => !some.includes('new') && !some.includes('--out'))
    .map((some) => some.join(' ')),
);

const commands = target(
  'commands',
  25,
  fc.tuple(session, session, wildStream, words),
  async ([day, other, base, line]) => {
    const at = folderWith({ 'day.trib': day, 'other.trib': other, 'base.rtcm3': base });
    try {
      const asked = line
        .split(' ')
        .map((word) => (/^(\.|out|.*\.(?:trib|rtcm3))$/.test(word) ? at.path(word) : word));
      const { status, printed, complained } = await tribrach(asked, { input: 'mark A\n' });
      law([0, 1, 2].includes(status), `the exit status is ${status}`);
      law(!/a fault in tribrach itself/.test(complained), complained);
      law(!/\n\s+at .*:\d+:\d+/.test(complained + printed), `a stack is shown: ${complained}`);
      law(status !== 2 || (printed === '' && complained !== ''), 'it could not run and does not say why');
      if (line.startsWith('capture base.rtcm3'))
        law(status === 0 && !/undefined|NaN|null|not a number/.test(printed), `${line} says ${printed}`);
      for (const [name, bytes] of [
        ['day.trib', day],
        ['other.trib', other],
        ['base.rtcm3', base],
      ] as const)
        law(Buffer.compare(readFileSync(at.path(name)), bytes) === 0, `${name} is not what it was`);
    } finally {
      at.remove();
    }
  },
);

export const COMMANDS = [commands];
