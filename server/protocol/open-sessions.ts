/** The sessions that an editor has open: each keystroke re-reads one entry, and soon after the last one all is inspected anew. */
import { editDocument, openDocument, type Document } from '../../grammar/document.ts';
import { offsetOf } from '../../grammar/lines.ts';
import { inspect, type Inspection } from '../inspect.ts';
import { isRefusal } from '../quantities/refusal.ts';
import type { Files } from '../session/files.ts';
import { sessionOf, type Session } from '../session/session.ts';
import { pathOf } from './addresses.ts';

/** What the program that the server runs in lends it. */
export interface Platform {
  /** Files that a session at this path may read; `folders` are those that the editor has open. */
  filesFor(path: string, folders: readonly string[]): Files;
  /** Session files below a folder. */
  sessionsBelow(folder: string): readonly string[];
  /** Runs the task after so many milliseconds; after 0, as soon as this turn is over. */
  later(task: () => void, milliseconds: number): void;
  /** Milliseconds that go by. */
  now(): number;
  /** Where a file's contents take time to arrive. */
  readonly reading?: Reading;
}

export interface Reading {
  /** Some of these have been asked for and not arrived. */
  awaits(paths: Iterable<string>): boolean;
  /** Anything has been asked for and not arrived. */
  pending(): boolean;
  /** Everything asked for so far has arrived. */
  all(): Promise<void>;
  onArrival(listener: (path: string) => void): void;
  /** They have changed, or may have. */
  forget(paths: readonly string[]): void;
}

export interface OpenSession {
  readonly address: string;
  readonly path: string;
  version: number;
  document: Document;
  /** Null from a change until it has been inspected. */
  inspection: Inspection | null;
  /** Counts inspections. */
  edition: number;
  /** Paths of all files that an inspection has asked for. */
  readonly reads: Set<string>;
  files: Files;
}

export interface TextChange {
  readonly range?: { readonly start: LinePosition; readonly end: LinePosition };
  readonly text: string;
}
export interface LinePosition {
  readonly line: number;
  readonly character: number;
}

/** Milliseconds. */
const QUICK = 20;
const LONGEST_PAUSE = 200;

export type OpenSessions = ReturnType<typeof openSessions>;

/** Who is told what. */
export interface Listener {
  /** Findings are wanted without being asked for, so that each change is inspected soon. */
  readonly eager: boolean;
  /** A session is not what it was, and where the listener is eager it has been inspected. */
  changed(session: OpenSession): void;
  /** Sessions are not what they were although their own texts are: another file has changed. */
  othersChanged(): void;
}

export function openSessions(platform: Platform, listener: Listener) {
  const open = new Map<string, OpenSession>();
  const waiting = new Set<OpenSession>();
  let othersWait = false;
  let folders: readonly string[] = [];
  let scheduled = false;
  let lastTook = 0;

  function openText(address: string, version: number, text: string): void {
    const path = pathOf(address);
    const reads = new Set<string>();
    const files = watched(platform.filesFor(path, folders), reads);
    const document = openDocument(path, text);
    const session: OpenSession = {
      address,
      path,
      version,
      document,
      inspection: null,
      edition: 0,
      reads,
      files,
    };
    open.set(path, session);
    changed(session);
  }

  function change(address: string, version: number, changes: readonly TextChange[]): void {
    const session = open.get(pathOf(address));
    if (!session) return;
    session.document = changes.reduce(changedBy, session.document);
    session.version = version;
    changed(session);
  }

  function close(address: string): void {
    const session = open.get(pathOf(address));
    if (!session) return;
    open.delete(session.path);
    waiting.delete(session);
    staleBecauseOf([session.path]);
  }

  function changed(session: OpenSession): void {
    session.inspection = null;
    waiting.add(session);
    staleBecauseOf([session.path]);
    schedule();
  }

  /** Sessions that have read one of these files are inspected anew. */
  function staleBecauseOf(paths: readonly string[]): void {
    for (const session of open.values()) {
      if (!paths.some((path) => session.reads.has(path))) continue;
      session.inspection = null;
      waiting.add(session);
      othersWait = true;
    }
    schedule();
  }

  function schedule(): void {
    if (scheduled || waiting.size === 0) return;
    scheduled = true;
    // A text that takes long to inspect waits for keystrokes that follow close behind; the last state always comes.
    const pause = lastTook > QUICK ? Math.min(lastTook, LONGEST_PAUSE) : 0;
    platform.later(inspectNext, pause);
  }

  function inspectNext(): void {
    scheduled = false;
    const [session] = waiting;
    if (!session) return;
    waiting.delete(session);
    try {
      if (listener.eager) inspectTimed(session);
      // What is said before a file arrives would be wrong a moment later; its arrival starts another inspection.
      if (!awaitsFiles(session)) listener.changed(session);
      if (waiting.size === 0 && othersWait) {
        othersWait = false;
        listener.othersChanged();
      }
    } finally {
      schedule();
    }
  }

  function inspectTimed(session: OpenSession): void {
    const start = platform.now();
    inspectionOf(session);
    lastTook = platform.now() - start;
  }

  const awaitsFiles = (session: OpenSession) => platform.reading?.awaits(session.reads) ?? false;

  /** Inspected, with every file that it asked for. */
  async function settled(session: OpenSession): Promise<Inspection> {
    let inspection = inspectionOf(session);
    while (awaitsFiles(session)) {
      await platform.reading?.all();
      inspection = inspectionOf(session);
    }
    return inspection;
  }

  function filesChanged(paths: readonly string[]): void {
    platform.reading?.forget(paths);
    staleBecauseOf(paths);
  }
  platform.reading?.onArrival((path) => staleBecauseOf([path]));

  /** What a folder lets be read may be other than it was; sessions that have asked for a file ask again. */
  function setFolders(paths: readonly string[]): void {
    folders = paths;
    for (const session of open.values())
      session.files = watched(platform.filesFor(session.path, folders), session.reads);
    filesChanged([...open.values()].flatMap(({ reads }) => [...reads]));
  }

  function inspectionOf(session: OpenSession): Inspection {
    if (!session.inspection) {
      session.inspection = inspect(session.document, session.files);
      session.edition += 1;
    }
    return session.inspection;
  }

  /** Texts open in the editor come before those on the disk. */
  function watched(files: Files, reads: Set<string>): Files {
    return {
      document: (path) => {
        reads.add(path);
        return open.get(path)?.document ?? files.document(path);
      },
      bytes: (path) => {
        reads.add(path);
        return files.bytes(path);
      },
    };
  }

  function documentAt(path: string): Document | null {
    const document = open.get(path)?.document ?? platform.filesFor(path, folders).document(path);
    return isRefusal(document) ? null : document;
  }

  /** Paths of the sessions that are open or lie below the editor's folders. */
  const paths = (): string[] => [
    ...new Set([...open.keys(), ...folders.flatMap((folder) => platform.sessionsBelow(folder))]),
  ];

  /** Of a session that need not be open, with the paths of the files that it asked for; null where it cannot be read. */
  async function inspectionOfFile(
    path: string,
  ): Promise<{ inspection: Inspection; reads: ReadonlySet<string> } | null> {
    const reads = new Set([path]);
    for (;;) {
      const document = documentAt(path);
      const inspection = document && inspect(document, watched(platform.filesFor(path, folders), reads));
      if (!platform.reading?.awaits(reads)) return inspection && { inspection, reads };
      await platform.reading.all();
    }
  }

  /** All sessions that can be found: open, below the editor's folders, or used by one of these. */
  function everySession(): Session[] {
    const sessions = new Map<string, Session>();
    const add = (path: string): void => {
      if (sessions.has(path)) return;
      const opened = open.get(path);
      const document = documentAt(path);
      if (!document) return;
      const session = opened
        ? inspectionOf(opened).session
        : sessionOf(document, watched(platform.filesFor(path, folders), new Set()));
      sessions.set(path, session);
      for (const used of session.documents.keys()) add(used);
    };
    for (const path of paths()) add(path);
    return [...sessions.values()];
  }

  /** The same, once all files have arrived that this takes: what one names, another may name in turn. */
  async function everySessionRead(): Promise<Session[]> {
    for (;;) {
      const sessions = everySession();
      if (!platform.reading?.pending()) return sessions;
      await platform.reading.all();
    }
  }

  async function pathsRead(): Promise<string[]> {
    for (;;) {
      const found = paths();
      if (!platform.reading?.pending()) return found;
      await platform.reading.all();
    }
  }

  return {
    open: openText,
    change,
    close,
    filesChanged,
    documentAt,
    everySession: everySessionRead,
    paths: pathsRead,
    inspectionOfFile,
    /** Lets everything that has come in meanwhile be answered first. */
    turn: () => new Promise<void>((resolve) => platform.later(resolve, 0)),
    all: () => [...open.values()],
    at: (address: string) => open.get(pathOf(address)) ?? null,
    inspectionAt: (address: string) => {
      const session = open.get(pathOf(address));
      return session ? inspectionOf(session) : null;
    },
    inspectionOf,
    settled,
    setFolders,
  };
}

function changedBy(document: Document, { range, text }: TextChange): Document {
  if (!range) return openDocument(document.path, text);
  const offset = ({ line, character }: LinePosition) => offsetOf(document, { line, column: character });
  const start = offset(range.start);
  return editDocument(document, start, Math.max(start, offset(range.end)), text);
}
