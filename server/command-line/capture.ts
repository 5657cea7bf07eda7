/** `tribrach capture`: what a recording of RTCM 3 corrections holds, read piece by piece, however long it is. */
import { fstatSync } from 'node:fs';
import { type Command, Option } from 'commander';
import { captureReader, type Capture } from '../evidence/rtcm3/capture.ts';
import { isRefusal } from '../quantities/refusal.ts';
import { captureJson, captureText } from './capture-text.ts';
import { CannotRun, type Io } from './io.ts';
import { progressOf } from './progress.ts';
import { openRegular, pieces } from './read-file.ts';

interface Options {
  readonly format: keyof typeof ANSWERS;
}

const ANSWERS = {
  text: captureText,
  json: (path: string, capture: Capture) => `${JSON.stringify(captureJson(path, capture), null, 2)}\n`,
} satisfies Record<string, (path: string, capture: Capture, io: Io) => string>;

export function register(program: Command, io: Io): void {
  program
    .command('capture')
    .description('print what a recording of RTCM 3 corrections holds; exit 1 when it holds no message')
    .argument('<file>', 'a recording of the corrections, of any length')
    .addOption(new Option('--format <format>', 'how to answer').choices(Object.keys(ANSWERS)).default('text'))
    .action((path: string, options: Options) => {
      const capture = readCapture(path, io);
      io.print(ANSWERS[options.format](path, capture, io), options.format);
      if (capture.frames === 0) io.exitWith(1);
    });
}

function readCapture(path: string, io: Io): Capture {
  const descriptor = openRegular(path);
  if (isRefusal(descriptor)) throw new CannotRun([`cannot read ${path}: ${descriptor.refused}`]);
  const { size } = fstatSync(descriptor);
  const reader = captureReader();
  let read = 0;
  const progress = progressOf(path, () => (size > 0 ? read / size : null), io, {
    every: 16,
    told: () => `${Math.round(read / 1_000_000)} of ${Math.round(size / 1_000_000)} MB`,
  });
  for (const piece of pieces(descriptor, path)) {
    reader.push(piece);
    read += piece.length;
    progress.step();
  }
  progress.finish();
  return reader.finish();
}
