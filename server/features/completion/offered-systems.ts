/** Coordinate systems by code, name or area of use, out of the register carried in the package. */
import { searchSystems, systemOf, type FoundSystem } from '../../geodesy/registry/registry.ts';
import type { Item } from '../../../grammar/tree.ts';
import type { Inspection } from '../../inspect.ts';
import { isRefusal } from '../../quantities/refusal.ts';
import { isHole } from '../../quantities/value.ts';
import { written } from '../names.ts';
import type { Before, Offer } from './completion.ts';

/** Everything typed behind the word is searched for, so that `grid portugal tm` finds a system, too. */
export function offeredSystems(before: Before, begin: number, { session, derivation }: Inspection): Offer[] {
  const { offset, word } = before;
  const searched = session.document.text.slice(begin, offset);
  const wanted = searched.replace(/^epsg\s*:*/i, '').trim();
  const used = wanted === '' ? inUse(before, begin, session) : [];
  if (used.length > 0) return used;
  const kinds = word === 'grid' || wanted === '' ? GRIDS : SYSTEMS;
  const atMost = wanted === '' ? FEW : MOST;
  const found = searchSystems(wanted, { atMost, kinds, near: placeOf(derivation) });
  return found.map((system) => ({ ...systemOffer(system), start: begin, matches: searched }));
}

const MOST = 40;
/** Near a place with nothing typed: those of the smallest areas. */
const FEW = 12;

const GRIDS: readonly FoundSystem['kind'][] = ['projected', 'compound'];
const SYSTEMS: readonly FoundSystem['kind'][] = [
  'projected',
  'compound',
  'geographic',
  'geographic-3d',
  'geocentric',
];

function systemOffer({ code, name, kind, areaName }: FoundSystem) {
  const system = systemOf(code);
  const unit = 'unit' in system ? [system.unit.name] : [];
  return {
    kind: 'system' as const,
    label: code,
    beside: name,
    says: [name, kind, ...unit, `area of use: ${areaName}`].join('; '),
    text: code,
  };
}

/** Where a mark is said to be, or where a receiver was told that it is. */
function placeOf({ marks, setups }: Inspection['derivation']) {
  const told = [
    ...marks.values(),
    ...[...setups.values()].flatMap(({ keyed }) => keyed.map(({ located }) => located)),
  ];
  for (const place of told) {
    if (isHole(place) || isHole(place.latitude) || isHole(place.longitude)) continue;
    return { latitude: place.latitude.value, longitude: place.longitude.value };
  }
  return null;
}

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
    [...session.jobs.values()]
      .flatMap((job) => [job?.grid?.name, word === 'grid' ? undefined : job?.datum?.name])
      .filter((code) => code),
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
