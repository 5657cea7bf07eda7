/** Coordinate systems by code, name or area of use, out of the register carried in the package. */
import { searchSystems, systemOf } from '../../geodesy/registry/registry.ts';
import type { Item } from '../../../grammar/tree.ts';
import type { Inspection } from '../../inspect.ts';
import { isRefusal } from '../../quantities/refusal.ts';
import { written } from '../names.ts';
import type { Before, Offer } from './completion.ts';

/** Everything typed behind the word is searched for, so that `grid portugal tm` finds a system, too. */
export function offeredSystems(before: Before, begin: number, { session }: Inspection): Offer[] {
  const { offset } = before;
  const searched = session.document.text.slice(begin, offset);
  const wanted = searched.replace(/^epsg\s*:*/i, '').trim();
  if (wanted === '') return inUse(before, begin, session);
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
export function systemStart({ word, items, start, cursor, typed }: Before): number | null {
  const naming = word === 'grid' || word === 'datum';
  const opening = naming ? -1 : items.findLastIndex(isIn);
  if (opening < 0 && !naming) return null;
  const [first, ...more] = items.slice(opening + 1);
  if (first?.kind === 'text') return null;
  // Names of several words are searched for; behind a whole code, or what goes on with the phrase, none is.
  if (more.some(({ kind }) => kind === 'comma' || kind === 'word')) return null;
  if (first?.kind === 'name' && /^epsg:+\d+$/i.test(first.name) && (typed === '' || more.length > 0))
    return null;
  return Math.min(start, cursor.start + (first?.start ?? Infinity));
}

const isIn = (item: Item) => item.kind === 'word' && item.word === 'in';

/** With nothing typed yet: the systems of the job and of the files it uses, and the ground grids. */
function inUse({ word, cursor }: Before, start: number, session: Inspection['session']): Offer[] {
  const mayBeGround = !(word === 'datum' || cursor.bound.kind === 'ground');
  const codes = new Set(
    [...session.jobs.values()].flatMap((job) => [job?.grid?.name, job?.datum?.name]).filter((code) => code),
  );
  const named = [...codes].map((code) => ({ label: code ?? '', beside: nameOf(code ?? '') }));
  const grounds = (mayBeGround ? [...session.grounds.values()] : [])
    .filter(({ name }) => !codes.has(name))
    .map(({ name, description }) => ({
      label: name,
      beside: description ?? 'ground grid',
      text: written(name),
    }));
  return [...named, ...grounds].map((offer) => ({ kind: 'system', text: offer.label, ...offer, start }));
}

function nameOf(code: string): string {
  const system = systemOf(code);
  return isRefusal(system) ? 'named in this job' : `${system.name}, named in this job`;
}
