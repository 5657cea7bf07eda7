/** What one occupation adds to a check's uncertainty: receivers over the distance, centring at both ends, the taped height. */
import { toRadians } from '../../geodesy/angles.ts';
import { computeExactly } from '../../quantities/computed.ts';
import { showLength } from '../../quantities/show.ts';
import { circularRadius, normalHalfWidth } from '../../quantities/statistics.ts';
import { assumed, isHole, type Assumed, type Maybe, type Value } from '../../quantities/value.ts';
import type { Check, Rover, Stated } from '../../session/entries.ts';
import { remembered } from '../remembered.ts';
import type { SetupValues } from '../setups/setup.ts';

/** Defaults, all common practice: receivers 8 mm + 1 ppm (a radius) and 15 mm + 1 ppm up, plummet 1 mm, bubbles of 8′. */
const RECEIVER_HORIZONTAL = assumed(
  'receivers, horizontal constant',
  0.008,
  'm',
  0,
  'a receiver pair is good to 8 mm + 1 ppm horizontally, as a radius (common practice)',
);
const RECEIVER_VERTICAL = assumed(
  'receivers, vertical constant',
  0.015,
  'm',
  0,
  'a receiver pair is good to 15 mm + 1 ppm vertically (common practice)',
);
const RECEIVER_RATE = assumed(
  'receivers, part that grows with distance',
  1e-6,
  '',
  0,
  '1 ppm of the distance (common practice)',
);
const PLUMMET = assumed('plummet', 0.001, 'm', 0, 'a plummet is good to 1 mm at the head (common practice)');
const BUBBLE = assumed(
  'bubble',
  8 / 60,
  '°',
  0,
  "the bubble of a tribrach has 8' to the division (common practice)",
);
const ON_BIPOD = assumed(
  'lean of the rover pole',
  2 / 60,
  '°',
  0,
  "a pole on a bipod stands to 2' (common practice)",
);
const HELD = assumed(
  'lean of the rover pole',
  8 / 60,
  '°',
  0,
  "a pole held by hand stands to 8' (common practice)",
);
const POLE_LENGTH = assumed(
  'rover pole',
  2,
  'm',
  0,
  'the usual length, since the notes give none (common practice)',
);
/** Where no antenna height is known, for planning. */
const USUAL_HEIGHT = assumed('antenna height', 1.5, 'm', 0, 'no antenna height is known');
const USUAL_TAPE = assumed('uncertainty of the antenna height', 0.001, 'm', 0, 'no antenna height is known');

export interface Budget {
  readonly horizontal: Maybe<Value>;
  readonly up: Maybe<Value>;
}

/** Standard uncertainties of one axis and of up, without the marks: what moves from one occupation to the next. */
export interface Occupation {
  readonly axis: Value;
  readonly up: Value;
  readonly parts: OccupationParts;
}

/** Standard uncertainties in metres, each with its story. */
export interface OccupationParts {
  readonly receivers: { readonly axis: Value; readonly up: Value };
  readonly plummet: Value;
  /** Of the base's tribrach, at the height of the ARP. */
  readonly tilt: Value;
  /** Of the rover pole, at its length. */
  readonly lean: Value;
  /** Null where no antenna height is known. */
  readonly antennaHeight: Value | null;
}

/** What one occupation contributes: receivers over the distance, centring at both ends, the taped height. */
export function occupationSpread(
  setup: SetupValues,
  check: Pick<Check, 'name' | 'pole'>,
  rover: Rover | null,
  distance: Value,
): Occupation {
  const parts = partsOf(setup, check, rover, distance);
  const { receivers, plummet, tilt, lean } = parts;
  const axis = computeExactly(
    `standard uncertainty of ${check.name} without the marks, each horizontal axis`,
    'm',
    { symbol: 'u', expression: '√(u_r² + u_p² + u_t² + u_l²)', evaluable: true, source: BUDGET_SOURCE },
    { u_r: receivers.axis, u_p: plummet, u_t: tilt, u_l: lean },
    Math.hypot(receivers.axis.value, plummet.value, tilt.value, lean.value),
  );
  const tape = parts.antennaHeight
    ? assumed(
        'uncertainty of the antenna height',
        parts.antennaHeight.sigma ?? USUAL_TAPE.value,
        'm',
        0,
        'as computed from the tape',
      )
    : USUAL_TAPE;
  const up = computeExactly(
    `standard uncertainty of ${check.name} without the marks, up`,
    'm',
    { symbol: 'u', expression: '√(u_r² + u_H²)', evaluable: true, source: BUDGET_SOURCE },
    { u_r: receivers.up, u_H: tape },
    Math.hypot(receivers.up.value, tape.value),
  );
  return { axis, up, parts };
}

function partsOf(
  setup: SetupValues,
  check: Pick<Check, 'name' | 'pole'>,
  rover: Rover | null,
  distance: Value,
): OccupationParts {
  const arp = setup.height.arp;
  const pole = check.pole ?? rover?.pole ?? null;
  const { plummet, tilt } = centringOf(setup);
  const τ = pole?.held ? HELD : ON_BIPOD;
  const L = pole && !isHole(pole.length) ? pole.length : POLE_LENGTH;
  return {
    plummet,
    tilt,
    receivers: {
      axis: receiversOf(rover?.uncertainty?.horizontal ?? null, 'horizontal', distance, check.name),
      up: receiversOf(rover?.uncertainty?.vertical ?? null, 'up', distance, check.name),
    },
    lean: computeExactly(
      `centring of ${check.name} by the pole's bubble`,
      'm',
      {
        symbol: 'u_l',
        expression: 'tan(τ) · L',
        evaluable: true,
        source: `a pole ${pole?.held ? 'held by hand leans by 8′' : 'on a bipod leans by 2′'} over its length (common practice)`,
      },
      { τ, L },
      Math.tan(toRadians(τ.value)) * L.value,
    ),
    antennaHeight: isHole(arp) ? null : arp,
  };
}

/** Of a base over its mark: the same for every check from it. */
export const centringOf = remembered((setup: SetupValues): Pick<OccupationParts, 'plummet' | 'tilt'> => {
  const { plummet, bubble } = setup.setup;
  const arp = setup.height.arp;
  const β = bubble && !isHole(bubble) ? bubble : BUBBLE;
  const H = isHole(arp) ? USUAL_HEIGHT : arp;
  return {
    plummet: plummet && !isHole(plummet) ? plummet : PLUMMET,
    tilt: computeExactly(
      `centring of ${setup.setup.name} by its bubble`,
      'm',
      {
        symbol: 'u_t',
        expression: 'tan(β / 4) · H',
        evaluable: true,
        source: 'a quarter of the bubble’s division over the height of the ARP (common practice)',
      },
      { β, H },
      Math.tan(toRadians(β.value / 4)) * H.value,
    ),
  };
});

/** As the notes state it of the rover, else by default; a radius is brought to each of its two axes. */
function receiversOf(
  stated: Stated | null,
  direction: 'horizontal' | 'up',
  distance: Value,
  check: string,
): Value {
  const horizontal = direction === 'horizontal';
  const usable = stated && !isHole(stated.constant) && !isHole(stated.perDistance) ? stated : null;
  const a =
    usable && !isHole(usable.constant)
      ? usable.constant
      : horizontal
        ? RECEIVER_HORIZONTAL
        : RECEIVER_VERTICAL;
  const b = usable ? usable.perDistance : RECEIVER_RATE;
  const divisor = divisorOf(usable, horizontal);
  const sum = b && !isHole(b) ? 'a + b · D' : 'a';
  const inputs = { a, ...(b && !isHole(b) ? { b, D: distance } : {}), ...(divisor ? { k: divisor } : {}) };
  const rate = b && !isHole(b) ? b.value * distance.value : 0;
  return computeExactly(
    `receivers at ${check}, ${horizontal ? 'each horizontal axis' : 'up'}`,
    'm',
    {
      symbol: 'u_r',
      expression: divisor ? `(${sum}) / k` : sum,
      evaluable: true,
      source: usable
        ? 'as the notes state it of the rover'
        : horizontal
          ? '8 mm + 1 ppm as a radius, over √2 for each axis (common practice)'
          : '15 mm + 1 ppm (common practice)',
    },
    inputs,
    (a.value + rate) / (divisor?.value ?? 1),
  );
}

function divisorOf(stated: Stated | null, horizontal: boolean): Value | null {
  if (!stated) return horizontal ? RADIAL : null;
  if (stated.confidence === null) return null;
  const factor = horizontal ? circularRadius(stated.confidence) : normalHalfWidth(stated.confidence);
  const because = `factor at ${Math.round(stated.confidence * 1000) / 10} %, ${horizontal ? 'of a radius' : 'of a half-width'}`;
  return assumed('factor of the stated uncertainty', factor, '', 0, because);
}
/** A radial standard uncertainty is that of two equal axes together. */
const RADIAL = assumed('from a radius to one of two axes', Math.SQRT2, '', 0, '√2, both axes being equal');

/** An error of size zero that is known to this standard uncertainty. */
export const errorOf = (name: string, size: Value): Value => new SizedError(name, size);

/** The size that an error was made from, which has a story of its own. */
export const sizeOf = (error: Value): Value | undefined =>
  error instanceof SizedError ? error.size : undefined;

/** Why it is so large is told when somebody asks. */
class SizedError implements Assumed {
  readonly origin = 'assumed';
  readonly value = 0;
  readonly unit = 'm';
  readonly sigma: number;

  constructor(
    readonly name: string,
    readonly size: Value,
  ) {
    this.sigma = size.value;
  }

  get because() {
    return `${showLength(this.sigma)}, ${reasonOf(this.size)}`;
  }
}

/** Why a size is what it is, in a few words. */
function reasonOf(size: Value): string {
  if (size.origin === 'computed') return size.formula.source;
  return size.origin === 'assumed' ? size.because : `given as ${size.typed}`;
}

export const BUDGET_SOURCE = 'law of propagation of uncertainty (JCGM 100:2008, 5.1.2)';
