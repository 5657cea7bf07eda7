/** Coordinate systems by code, name or area of use, out of the register carried in the package. */
import { searchSystems } from '../../geodesy/registry/registry.ts';
import type { Item } from '../../../grammar/tree.ts';
import type { Inspection } from '../../inspect.ts';
import type { Before, Offer } from './completion.ts';

/** Everything typed behind the word is searched for, so that `grid portugal tm` finds a system, too. */
export function offeredSystems({ offset }: Before, begin: number, { session }: Inspection): Offer[] {
  const searched = session.document.text.slice(begin, offset);
  const wanted = searched.replace(/^epsg\s*:*/i, '').trim();
  if (wanted === '') return inUse(session, begin);
  return searchSystems(wanted, MOST)
    .filter(({ kind }) => kind !== 'vertical')
    .map(({ code, name, kind, areaName }) => ({
      kind: 'system',
      label: code,
      beside: name,
      says: `${kind}; area of use: ${areaName}`,
      text: code,
      start: begin,
      matches: searched,
    }));
}

const MOST = 40;

/** Where the name of a coordinate system starts that is being typed, or null where none may stand. */
export function systemStart({ word, items, start, cursor }: Before): number | null {
  const opening = word === 'grid' || word === 'datum' ? -1 : items.findLastIndex(isIn);
  if (opening < 0 && word !== 'grid' && word !== 'datum') return null;
  const first = items[opening + 1];
  if (first && first.kind === 'text') return null;
  return Math.min(start, cursor.start + (first?.start ?? Infinity));
}

const isIn = (item: Item) => item.kind === 'word' && item.word === 'in';

/** With nothing typed yet: the systems of the job and of the files it uses. */
function inUse(session: Inspection['session'], start: number): Offer[] {
  const codes = new Set(
    [...session.jobs.values()].flatMap((job) => [job?.grid?.name, job?.datum?.name]).filter((code) => code),
  );
  return [...codes].map((code) => ({
    kind: 'system',
    label: code ?? '',
    beside: 'named in this job',
    text: code ?? '',
    start,
  }));
}
