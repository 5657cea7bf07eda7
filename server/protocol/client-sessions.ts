/** What a server without a disk asks its editor for: the files that sessions name, and which session files there are; at first none, while they are on their way. */
import type { Files } from '../session/files.ts';
import { addressOf, pathOf } from './addresses.ts';
import { clientFiles, READ_FILE } from './client-files.ts';
import type { Reading } from './open-sessions.ts';

/** The request that the extension answers with the addresses of session files below `{ address }`. */
const SESSION_FILES = 'tribrach/sessionFiles';

/** `inText` for a connection that carries no bytes. */
export function clientDisk(
  ask: (method: string, asked: object) => Promise<unknown>,
  inText: boolean,
): { files: Files; sessionsBelow(folder: string): readonly string[]; reading: Reading } {
  const { files, reading } = clientFiles((address) =>
    ask(READ_FILE, { address, ...(inText ? { inText } : {}) }),
  );
  const lists = clientSessions((address) => ask(SESSION_FILES, { address }));
  return {
    files,
    sessionsBelow: lists.below,
    reading: {
      ...reading,
      pending: () => reading.pending() || lists.pending(),
      all: async () => void (await Promise.all([reading.all(), lists.all()])),
      forget: (paths) => {
        reading.forget(paths);
        lists.forget();
      },
    },
  };
}

function clientSessions(ask: (address: string) => Promise<unknown>) {
  const known = new Map<string, readonly string[]>();
  const onTheWay = new Map<string, Promise<void>>();
  /** Counts what may have made a list stale while it was on its way. */
  let changes = 0;

  async function listed(folder: string): Promise<void> {
    const before = changes;
    const answer = await ask(addressOf(folder)).catch(() => null);
    onTheWay.delete(folder);
    if (before === changes) known.set(folder, pathsIn(answer));
  }

  return {
    below: (folder: string): readonly string[] => {
      const sessions = known.get(folder);
      if (!sessions && !onTheWay.has(folder)) onTheWay.set(folder, listed(folder));
      return sessions ?? [];
    },
    pending: () => onTheWay.size > 0,
    all: async () => void (await Promise.all(onTheWay.values())),
    /** Files have come, changed or gone. */
    forget: () => {
      changes += 1;
      known.clear();
    },
  };
}

const pathsIn = (answer: unknown): string[] =>
  Array.isArray(answer)
    ? answer.filter((address): address is string => typeof address === 'string').map(pathOf)
    : [];
