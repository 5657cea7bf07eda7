/** Published ways from the datum of a position to that of the job, the most accurate first. */
import { farEnd, transformationsOf } from '../../geodesy/datums/transformation.ts';
import { datumNamed, horizontalSystemOf } from '../../geodesy/registry/registry.ts';
import type { Item } from '../../../grammar/tree.ts';
import type { Inspection } from '../../inspect.ts';
import { isRefusal } from '../../quantities/refusal.ts';
import { showNumber } from '../../quantities/show.ts';
import type { Before, Offer } from './completion.ts';

/** More than these nobody reads. */
const MOST = 40;

export function offeredTransformations({ word, items, start }: Before, { session }: Inspection): Offer[] {
  const { grid, datum } = session.job ?? {};
  const at = items.findLastIndex((item) => item.kind === 'word' && item.word === 'in');
  const from = datumOf(word === 'datum' ? grid?.name : (nameIn(items[at + 1]) ?? grid?.name));
  const to = datumOf(word === 'datum' ? nameIn(items[0]) : (datum?.name ?? grid?.name));
  if (from === null) return [];
  return transformationsOf(from)
    .filter((one) => to === null || farEnd(one) === to)
    .flatMap(({ transformation: { code, name, accuracy, area } }) =>
      code === undefined
        ? []
        : [
            {
              kind: 'system' as const,
              label: code,
              beside: `${name}, good to ${showNumber(accuracy, 1)} m`,
              says: area.name,
              text: code,
              start,
            },
          ],
    )
    .slice(0, MOST);
}

function datumOf(system: string | undefined): string | null {
  if (system === undefined) return null;
  const known = datumNamed(system);
  if (known) return known.name;
  const found = horizontalSystemOf(system);
  return isRefusal(found) ? null : found.datum.name;
}

const nameIn = (item: Item | undefined) =>
  item?.kind === 'name' ? item.name : item?.kind === 'text' ? item.text : undefined;
