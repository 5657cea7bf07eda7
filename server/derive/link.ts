/** The correction link of a session: what each base sends, whether its radio carries it, and how far that reaches. */
import type { Radio, Stream } from '../session/entries.ts';
import type { Session } from '../session/session.ts';
import { isHole } from '../quantities/value.ts';
import type { CheckValues } from './check.ts';
import { differences, radioEnds, radioOf, type RadioEnds } from './link-ends.ts';
import { reachValues, type Farthest, type ReachValues } from './link-reach.ts';
import { streamValues, type StreamValues } from './link-stream.ts';
import { NOTHING, remembered, type Nothing } from './remembered.ts';

export interface LinkValues {
  readonly ends: RadioEnds;
  readonly streams: readonly StreamValues[];
  /** One for each pair of radios, or for a base's alone. */
  readonly reaches: readonly ReachValues[];
}

export function linkValues(session: Session, checks: readonly CheckValues[]): LinkValues {
  const ends = radioEnds([...session.radios.values()], new Set(session.setups.keys()));
  const only = session.setups.size === 1 ? ([...session.setups.keys()][0] ?? null) : null;
  const streams = session.streams.map((stream) => {
    const name = stream.from?.name ?? only ?? 'base';
    return streamOf(stream, radioOf(ends, name) ?? NOTHING, nameToken(name));
  });
  const reaches =
    ends.rovers.length === 0
      ? ends.bases.map((base) => reachOf(base, NOTHING, farthestOf(base, null, session, checks)))
      : ends.rovers.map((rover) => {
          const base = partnerOf(rover, ends);
          return reachOf(
            base ?? rover,
            base ? rover : NOTHING,
            farthestOf(base ?? rover, rover, session, checks),
          );
        });
  return { ends, streams, reaches };
}

/** The base that a rover's radio was set for: the one that differs least. */
export function partnerOf(rover: Radio, { bases }: RadioEnds): Radio | null {
  let best: { base: Radio; count: number } | null = null;
  for (const base of bases) {
    const count = differences(base, rover).length;
    if (!best || count < best.count) best = { base, count };
  }
  return best?.base ?? null;
}

const streamOf = remembered(
  (stream: Stream, radio: Radio | Nothing, name: { readonly name: string }): StreamValues =>
    streamValues(stream, name.name, radio === NOTHING ? null : (radio as Radio)),
);
const reachOf = remembered((base: Radio, rover: Radio | Nothing, farthest: Farthest | Nothing): ReachValues =>
  reachValues(
    base,
    rover === NOTHING ? null : (rover as Radio),
    farthest === NOTHING ? null : (farthest as Farthest),
  ),
);

const tokens = new Map<string, { readonly name: string }>();
function nameToken(name: string): { readonly name: string } {
  const token = tokens.get(name) ?? { name };
  tokens.set(name, token);
  return token;
}

/** The check farthest from its base; radios called after a setup or a rover count that one's checks only. */
function farthestOf(
  base: Radio,
  rover: Radio | null,
  session: Session,
  checks: readonly CheckValues[],
): Farthest | Nothing {
  let farthest: CheckValues | null = null;
  for (const check of checks) {
    if (session.setups.has(base.name) && check.setup?.setup.name !== base.name) continue;
    if (rover && session.rovers.has(rover.name) && check.rover?.name !== rover.name) continue;
    if (lengthOf(check) > (farthest ? lengthOf(farthest) : 0)) farthest = check;
  }
  return farthest ? farthestAt(farthest) : NOTHING;
}

const farthestAt = remembered((values: CheckValues): Farthest | Nothing => {
  const { ellipsoid } = values.distance;
  if (isHole(ellipsoid)) return NOTHING;
  const fixed = values.quality?.solution?.name === 'fixed';
  return { distance: ellipsoid, where: values.check.name, fixed };
});

const lengthOf = ({ distance: { ellipsoid } }: CheckValues) => (isHole(ellipsoid) ? 0 : ellipsoid.value);
