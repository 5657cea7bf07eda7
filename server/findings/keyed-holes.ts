/** Which parts of what a receiver must be told were not written down, once the setup is over. */
import type { SetupValues } from '../derive/setup.ts';
import { kind, type AnyFindingKind, type Subject } from './finding.ts';
import { addedDetail } from './edits.ts';
import { unreadDetail } from './unread.ts';

type Part = 'position' | 'height' | 'antennaHeight';

/** While the setup is open it may still come; where nothing at all was keyed, one finding is enough. */
export function notKeyed(
  code: string,
  part: Part,
  what: string,
  follows: string,
  line: string,
): AnyFindingKind {
  return kind({
    code,
    find: (subject) => setupsWithout(part, subject),
    tell: ({ setup }) => ({
      severity: 'warning',
      follows: [unreadDetail(setup.setup.name, 'keyed')],
      message: `What ${what} the receiver at ${setup.setup.name} was told is not written down, so ${follows} cannot be compared, and a slip in it stays unseen. Look it up on the receiver or in its log, and note it.`,
    }),
    mend: ({ setup }) => [
      {
        title: 'Add a line for it',
        edits: [addedDetail(setup.setup.place.path, setup.setup.entry, 'keyed', line)],
      },
    ],
  });
}

function setupsWithout(part: Part, { derivation }: Subject) {
  return [...derivation.setups.values()].flatMap((setup: SetupValues) => {
    if (setup.setup.until === null) return [];
    const last = setup.keyed[setup.keyed.length - 1]?.state;
    const has = {
      position: last?.position,
      height: last?.height ?? (last?.position?.form === 'geocentric' ? last.position : null),
      antennaHeight: last?.antennaHeight,
    };
    if (has[part]) return [];
    // A position that is missing as well tells of both.
    if (part === 'height' && !has.position) return [];
    const [name] = setup.setup.entry.header.items;
    const { place } = setup.setup;
    return [{ setup, place: name ? { ...place, start: name.start, end: name.end } : place }];
  });
}
