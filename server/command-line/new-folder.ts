/** A folder of new files, written whole or not at all: beside its place first, and moved there when all of it is done. */
import {
  chmodSync,
  closeSync,
  copyFileSync,
  existsSync,
  fsyncSync,
  linkSync,
  mkdirSync,
  openSync,
  renameSync,
  rmSync,
  statSync,
  writeSync,
} from 'node:fs';
import { dirname, join, resolve } from 'node:path';
import { FileText } from '../record/file-text.ts';
import { CannotRun } from './io.ts';
import { reasonOf } from './read-file.ts';
import { clearLeftovers, freshName } from './beside.ts';
import { reasonToKeep } from './writing.ts';

export interface NewFile {
  readonly name: string;
  /** Where what is to be written is put in. */
  readonly text: FileText;
  /** Said now and then: what has been gathered goes to the disk as soon as that is worth its while. */
  readonly spill: () => void;
  /** What has been gathered goes to the disk, and whoever gets the descriptor writes on from there. */
  readonly handOver: () => number;
}
export interface NewFolder {
  /** Begins a file; refuses one that is there already unless that was allowed, and always one that was read. */
  readonly file: (name: string) => NewFile;
  /** Moves everything to its place. */
  readonly keep: () => void;
  /** Takes away what has not been kept. */
  readonly discard: () => void;
}

const WORTH_WRITING = 1 << 16;

/** @param evidence files that were read, or that the session names, and that must never be replaced */
export function newFolder(path: string, evidence: readonly string[], force: boolean): NewFolder {
  const target = resolve(path);
  const existed = isFolder(target);
  const beside = made(target);
  const files = new Map<string, { readonly descriptor: number; readonly text: FileText }>();
  let kept = false;

  const flush = ({ descriptor, text }: { readonly descriptor: number; readonly text: FileText }) => {
    const bytes = text.taken();
    for (let done = 0; done < bytes.length;) done += writeSync(descriptor, bytes, done);
  };
  return {
    file(name) {
      const there = statSync(join(target, name), { throwIfNoEntry: false });
      const reason = there ? reasonToKeep(join(target, name), there, { evidence, force }) : null;
      if (reason !== null) throw new CannotRun([`cannot write ${join(path, name)}: ${reason}`]);
      const file = guarded(path, () => ({
        descriptor: openSync(join(beside, name), 'wx'),
        text: new FileText(),
      }));
      files.set(name, file);
      return {
        name,
        text: file.text,
        spill() {
          if (file.text.length > WORTH_WRITING) guarded(path, () => flush(file));
        },
        handOver() {
          guarded(path, () => flush(file));
          return file.descriptor;
        },
      };
    },
    keep() {
      guarded(path, () => {
        for (const file of files.values()) {
          flush(file);
          fsyncSync(file.descriptor);
          closeSync(file.descriptor);
        }
      });
      const names = [...files.keys()];
      files.clear();
      guarded(path, () => (existed ? moveInto(beside, target, names) : renameSync(beside, target)));
      kept = true;
    },
    discard() {
      for (const { descriptor } of files.values()) closeSync(descriptor);
      files.clear();
      if (!kept || existed) rmSync(beside, { recursive: true, force: true });
    },
  };
}

/** Beside the folder, so that moving is one step on one disk. */
function made(target: string): string {
  return guarded(target, () => {
    mkdirSync(dirname(target), { recursive: true });
    clearLeftovers(dirname(target));
    const folder = join(dirname(target), freshName());
    mkdirSync(folder);
    chmodSync(folder, 0o777 & ~process.umask());
    return folder;
  });
}

function isFolder(target: string): boolean {
  const stats = guarded(target, () => statSync(target, { throwIfNoEntry: false }));
  if (!stats) return false;
  if (!stats.isDirectory()) throw new CannotRun([`${target} is there already and is no folder`]);
  return true;
}

/** Files that are replaced stay where they are until the new one takes their place in one step; should any move fail, they come back. */
function moveInto(beside: string, target: string, names: readonly string[]): void {
  const aside = join(beside, freshName());
  mkdirSync(aside);
  const moved: string[] = [];
  try {
    for (const name of names) {
      if (existsSync(join(target, name))) keepAside(join(target, name), join(aside, name));
      renameSync(join(beside, name), join(target, name));
      moved.push(name);
    }
  } catch (error) {
    for (const name of moved)
      if (existsSync(join(aside, name))) renameSync(join(aside, name), join(target, name));
      else rmSync(join(target, name), { force: true });
    throw error;
  }
}

/** Some disks know no second name for a file. */
function keepAside(path: string, aside: string): void {
  try {
    linkSync(path, aside);
  } catch {
    copyFileSync(path, aside);
  }
}

function guarded<Answer>(path: string, act: () => Answer): Answer {
  try {
    return act();
  } catch (error) {
    if (error instanceof CannotRun) throw error;
    throw new CannotRun([`cannot write to ${path}: ${reasonOf(error)}`]);
  }
}
