/** Files read through the editor, for a server without a disk; the first answer is that they are on their way. */
import { openDocument, type Document } from '../../grammar/document.ts';
import { isRefusal, refuse, type Refusal } from '../quantities/refusal.ts';
import type { Files } from '../session/files.ts';
import { addressOf } from './addresses.ts';
import type { Reading } from './open-sessions.ts';

/** The request that the extension answers with `{ bytes }`, asked `inText` with `{ base64 }`, or with `{ refused }`. */
export const READ_FILE = 'tribrach/readFile';

export function clientFiles(ask: (address: string) => Promise<unknown>): { files: Files; reading: Reading } {
  const contents = new Map<string, Uint8Array | Refusal>();
  const documents = new WeakMap<Uint8Array, Document | Refusal>();
  const onTheWay = new Map<string, Promise<void>>();
  let tell: (path: string) => void = () => undefined;

  function bytes(path: string): Uint8Array | Refusal {
    // Seen from a text that has never been saved, a file's place is not known.
    if (!/^(\/|[a-z][a-z0-9+.-]*:)/i.test(path))
      return refuse('nobody knows where it lies before the session is saved');
    const known = contents.get(path);
    if (known) return known;
    if (!onTheWay.has(path)) onTheWay.set(path, fetched(path));
    return refuse('it is still being read');
  }

  async function fetched(path: string): Promise<void> {
    const answer = await ask(addressOf(path)).catch(() => null);
    onTheWay.delete(path);
    contents.set(path, contentsIn(answer));
    tell(path);
  }

  function document(path: string): Document | Refusal {
    const read = bytes(path);
    if (isRefusal(read)) return read;
    const opened = documents.get(read) ?? textOf(read, path);
    documents.set(read, opened);
    return opened;
  }

  return {
    files: { bytes, document },
    reading: {
      awaits: (paths) => [...paths].some((path) => onTheWay.has(path)),
      pending: () => onTheWay.size > 0,
      all: async () => void (await Promise.all(onTheWay.values())),
      onArrival: (listener) => {
        tell = listener;
      },
      forget: (paths) => {
        for (const path of paths) contents.delete(path);
      },
    },
  };
}

function contentsIn(answer: unknown): Uint8Array | Refusal {
  const said = typeof answer === 'object' && answer !== null ? (answer as Record<string, unknown>) : {};
  if (said['bytes'] instanceof Uint8Array) return said['bytes'];
  if (typeof said['base64'] === 'string')
    return Uint8Array.from(atob(said['base64']), (character) => character.charCodeAt(0));
  return refuse(
    typeof said['refused'] === 'string' ? said['refused'] : 'this editor does not hand out files',
  );
}

function textOf(read: Uint8Array, path: string): Document | Refusal {
  try {
    return openDocument(path, new TextDecoder('utf-8', { fatal: true, ignoreBOM: true }).decode(read));
  } catch {
    return refuse('it is not UTF-8; save the file as UTF-8');
  }
}
