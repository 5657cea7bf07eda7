/** Which parts of what a receiver must be told were not written down, once the setup is over. */
import { foundInEach, valuesOf } from '../../session/each.ts';
import type { SetupValues } from '../../derive/setups/setup.ts';
import { kind, type AnyFindingKind } from '../finding.ts';
import { addedDetail } from '../edits.ts';
import { unreadKeyed } from '../unread.ts';

type Part = 'position' | 'height' | 'antennaHeight';

/** While the setup is open it may still come; where nothing at all was keyed, one finding is enough. */
export function notKeyed(code: string, part: Part, what: string, line: string): AnyFindingKind {
  const setupsWithout = foundInEach((setup: SetupValues) => (lacks(part, setup) ? [at(setup)] : []));
  return kind({
    code,
    find: ({ derivation }) => setupsWithout(valuesOf(derivation.setups)),
    tell: ({ setup }) => ({
      severity: 'warning',
      follows: unreadKeyed(setup.setup.name, part === 'antennaHeight' ? 'antenna-height' : part),
      headline: `No keyed ${what} noted for ${setup.setup.name}.`,
      effect: 'A slip in it cannot be found.',
      action: 'Read it off the receiver or its log, and note it.',
    }),
    mend: ({ setup }) => [
      {
        title: 'Add a line for it',
        edits: [addedDetail(setup.setup.place.path, setup.setup.entry, 'keyed', line)],
      },
    ],
  });
}

function lacks(part: Part, { setup, keyed }: SetupValues): boolean {
  if (setup.until === null) return false;
  const last = keyed[keyed.length - 1]?.state;
  const has = {
    position: last?.position,
    height: last?.height ?? (last?.position?.form === 'geocentric' ? last.position : null),
    antennaHeight: last?.antennaHeight,
  };
  // A position that is missing as well tells of both.
  return !has[part] && !(part === 'height' && !has.position);
}

function at(setup: SetupValues) {
  const [name] = setup.setup.entry.header.items;
  const { place } = setup.setup;
  return { setup, place: name ? { ...place, start: name.start, end: name.end } : place };
}
