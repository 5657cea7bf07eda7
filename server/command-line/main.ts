/** The program `tribrach`: connects the commands with this process. */
import { isArchiveThread, serveArchive } from './archive.ts';
import { cacheFolder } from './cache-folder.ts';
import { isTableThread, serveTables } from './table-thread.ts';
import { runCommand } from './program.ts';
import type { ExitStatus, Io } from './io.ts';
import { LARGEST_SESSION } from './read-file.ts';

const WIDEST = 100;

const io: Io = {
  print: (text) => process.stdout.write(text),
  complain: (text) => process.stderr.write(text),
  readInput: async () => {
    const parts: Uint8Array[] = [];
    let size = 0;
    for await (const part of process.stdin as AsyncIterable<Uint8Array>) {
      parts.push(part);
      size += part.length;
      // One byte too many is enough to refuse it; what never ends is not waited for.
      if (size > LARGEST_SESSION) break;
    }
    return Buffer.concat(parts);
  },
  exitWith: (status: ExitStatus) => {
    process.exitCode = status;
  },
  colours: Boolean(process.stdout.isTTY) && !process.env['NO_COLOR'] && process.env['TERM'] !== 'dumb',
  terminal: Boolean(process.stdout.isTTY),
  width: process.stdout.isTTY ? Math.max(40, Math.min(WIDEST, process.stdout.columns)) : WIDEST,
  watched: Boolean(process.stderr.isTTY),
  program: process.argv[1] ?? null,
  cache: cacheFolder(),
};

process.stdout.on('error', (error: NodeJS.ErrnoException) => {
  // Whoever reads has seen enough, as in `tribrach check | head`.
  if (error.code === 'EPIPE') process.exit();
  process.stderr.write(`tribrach: the output cannot be written: ${error.message}\n`);
  process.exit(2);
});

if (isArchiveThread()) serveArchive();
else if (isTableThread()) serveTables();
else void runCommand(process.argv.slice(2), io);
