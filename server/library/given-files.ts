/** Files that a caller hands over, found by their paths; what was not handed over is not there. */
import { openDocument, type Document } from '../../grammar/document.ts';
import { refuse } from '../quantities/refusal.ts';
import { resolvePath, type Files } from '../session/files.ts';

export function givenFiles(given: Readonly<Record<string, string | Uint8Array>>): Files {
  const byPath = new Map(Object.entries(given).map(([path, content]) => [plain(path), content]));
  const documents = new Map<string, Document>();
  const bytes = new Map<string, Uint8Array>();
  return {
    document: (path) => {
      const content = byPath.get(plain(path));
      if (content === undefined) return refuse(NOT_GIVEN);
      const text = typeof content === 'string' ? content : new TextDecoder().decode(content);
      const document = documents.get(path) ?? openDocument(path, text);
      documents.set(path, document);
      return document;
    },
    bytes: (path) => {
      const content = byPath.get(plain(path));
      if (content === undefined) return refuse(NOT_GIVEN);
      const found =
        bytes.get(path) ?? (typeof content === 'string' ? new TextEncoder().encode(content) : content);
      bytes.set(path, found);
      return found;
    },
  };
}

const NOT_GIVEN = 'there is no such file among those that were handed over';

/** As a caller on Windows may spell it, too. */
const plain = (path: string) => resolvePath('', path.replaceAll('\\', '/'));
