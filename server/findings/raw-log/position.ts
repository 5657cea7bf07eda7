/** Raw observations that place the antenna somewhere else than the notes. */
import { loggedSetups } from '../capture/recorded.ts';
import type { Place } from '../../../grammar/tree.ts';
import type { Apart } from '../../derive/setups/raw-log.ts';
import type { SetupValues } from '../../derive/setups/setup.ts';
import { showLength, showNumber } from '../../quantities/show.ts';
import { isHole } from '../../quantities/value.ts';
import type { Stood } from '../../witness/testimony.ts';
import { kind } from '../finding.ts';

interface Elsewhere {
  readonly setup: SetupValues;
  readonly place: Place;
  readonly apart: Apart;
  readonly stood: Stood;
}

/** Beyond this it is another place, by all days of permanent stations that were looked at; the worst was 7.5 m for single epochs, 4 m for ten minutes. */
const ANOTHER_PLACE = 5;
/** A way to the keyed datum that is not known may hide this much. */
const UNKNOWN_FRAME = 1;

export const rawLogPosition = kind<Elsewhere>({
  code: 'raw-log/position',
  find: (subject) =>
    loggedSetups(subject).flatMap((setup) => {
      const { apart = null, testimony = null, file } = setup.rawLog ?? {};
      const stood = testimony?.stood ?? null;
      if (!apart || !stood || !file) return [];
      const unknown = apart.frameShift === null ? UNKNOWN_FRAME : 0;
      return apart.spatial > stood.spatial + unknown ? [{ setup, place: file.place, apart, stood }] : [];
    }),
  tell({ setup, apart, stood }) {
    const { name } = setup.setup;
    const unknown = apart.frameShift === null ? UNKNOWN_FRAME : 0;
    const far = apart.spatial > Math.max(ANOTHER_PLACE, stood.spatial) + unknown;
    const level = Math.hypot(apart.east, apart.north);
    const up = `${showLength(Math.abs(apart.up))} ${apart.up < 0 ? 'lower' : 'higher'}`;
    return {
      severity: far ? 'error' : 'information',
      headline: `The raw data place ${name} ${showLength(apart.spatial)} from where the notes do.`,
      effect: `${showLength(level)} horizontally and ${up}, ± ${showNumber(stood.spatial, 0)} m (95 %).${slipOf(setup, apart, level)}`,
      action: far
        ? `Before you use any point, look which mark ${name} stood on, and check its coordinates and height.`
        : 'Walk to a second mark before this base is trusted.',
    };
  },
});

function slipOf({ mark }: SetupValues, apart: Apart, level: number): string {
  const separation = mark?.separation;
  if (!separation || isHole(separation) || level > 5) return '';
  return Math.abs(Math.abs(apart.up) - Math.abs(separation.value)) < 5
    ? ` That is the separation of ${mark.mark.name} (${showLength(separation.value)}): a sea-level height where an ellipsoidal one belongs, or the other way round.`
    : '';
}
