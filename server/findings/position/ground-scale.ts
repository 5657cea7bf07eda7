/** A ground grid whose distances are not those on the ground where its marks stand. */
import { isHole } from '../../quantities/value.ts';
import { kind } from '../finding.ts';

/** Twenty millimetres in a kilometre: more than heights that differ by a hundred metres make. */
const MUCH = 20e-6;

export const positionGroundScale = kind({
  code: 'position/ground-scale',
  find: ({ session, derivation }) => {
    const { grid } = derivation.frame;
    if (isHole(grid) || !grid.ground) return [];
    const ground = session.grounds.get(grid.name);
    const left = [...derivation.marks.values()].flatMap(({ mark, combinedScale }) =>
      isHole(combinedScale) ? [] : [{ name: mark.name, factor: combinedScale.value }],
    );
    const [nearest] = left.sort((one, other) => Math.abs(one.factor - 1) - Math.abs(other.factor - 1));
    if (!ground || !nearest || Math.abs(nearest.factor - 1) <= MUCH) return [];
    const { combinedFactor } = grid.ground;
    const turned = Math.abs(nearest.factor * combinedFactor ** 2 - 1) < Math.abs(nearest.factor - 1) / 4;
    return [{ place: ground.place, ground: ground.name, ...nearest, combinedFactor, turned }];
  },
  tell: ({ ground, name, factor, combinedFactor, turned }) => {
    const perKilometre = Math.round(Math.abs(factor - 1) * 1e6);
    const wanted = (combinedFactor * factor).toFixed(8);
    return {
      severity: 'warning',
      headline: `Distances in ${ground} are ${perKilometre} mm per km too ${factor > 1 ? 'long' : 'short'} at ${name}.`,
      effect: turned
        ? 'The scale looks inverted: write grid over ground.'
        : 'The scale, or the point that it is about, is of another place.',
      action: `At ${name} the combined scale factor is ${wanted}.`,
    };
  },
});
