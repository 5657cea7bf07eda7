/** Moves a mark, letter by letter as it stands, to the end of a file that this one uses. */
import type { Entry } from '../../../grammar/tree.ts';
import { resolvePath } from '../../session/files.ts';
import type { Use } from '../../session/entries.ts';
import { sameValues } from '../trial.ts';
import type { Proposal } from './refactorings.ts';

export const movedMark: Proposal = ({ bound, entry, line, start }, { session }) => {
  if (bound.kind !== 'mark' || line !== entry.header || session.marks.get(bound.name) !== bound) return [];
  const { path } = session.document;
  const { written, whole } = entryAlone(entry);
  return session.entries
    .filter((one): one is Use => one.kind === 'use')
    .flatMap((use) => {
      const target = use.path ? resolvePath(path, use.path.text) : path;
      const file = session.documents.get(target);
      if (!use.path || !file || target === path) return [];
      // A picture is named relative to the file that names it.
      if (/^\s+photo\b/m.test(written) && folderOf(target) !== folderOf(path)) return [];
      const lineEnd = /\r\n|\r|\n/.exec(file.text)?.[0] ?? '\n';
      const gap = file.text === '' || /[\r\n]$/.test(file.text) ? '' : lineEnd;
      const end = file.text.length;
      return [
        {
          kind: 'move' as const,
          title: `Move mark ${bound.name} to ${use.path.text}`,
          edits: [
            { at: { path, start, end: start + whole }, text: '' },
            { at: { path: target, start: end, end }, text: gap + written + lineEnd },
          ],
          keeps: (before, after) =>
            after.session.marks.get(bound.name)?.place.path === target &&
            after.session.remarks.length <= before.session.remarks.length &&
            sameValues(before, after),
        },
      ];
    });
};

/** An entry from its first word to the last thing said in it, and how far that reaches with its line end. */
function entryAlone({ text, header, details }: Entry): { written: string; whole: number } {
  const last = details.at(-1) ?? header;
  const end = last.comment?.end ?? last.end;
  const lineEnd = /^[^\r\n]*(?:\r\n|\r|\n)?/.exec(text.slice(end))?.[0] ?? '';
  return { written: text.slice(0, end), whole: end + lineEnd.length };
}

const folderOf = (path: string) => path.slice(0, path.lastIndexOf('/') + 1);
