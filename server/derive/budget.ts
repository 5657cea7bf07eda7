/** What a right check stays within: the uncertainties of marks, centring, antenna height and receivers, at the job's confidence. */
import { toRadians } from '../geodesy/angles.ts';
import { compute } from '../quantities/computed.ts';
import { circularRadius, normalHalfWidth } from '../quantities/statistics.ts';
import { assumed, hole, isHole, type Maybe, type Value } from '../quantities/value.ts';
import type { Check, Rover } from '../session/entries.ts';
import type { Frame } from './frame.ts';
import { standardUncertainty, type MarkValues } from './mark.ts';
import type { SetupValues } from './setup.ts';

/** Defaults, all common practice: receivers 8 mm + 1 ppm (a radius) and 15 mm + 1 ppm up, plummet 1 mm, bubbles of 8′. */
const RECEIVER_HORIZONTAL = assumed(
  'receivers, horizontal constant',
  0.008,
  'm',
  0,
  'a receiver pair is good to 8 mm + 1 ppm horizontally (common practice)',
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
const POLE_TILT = assumed(
  'tilt of the rover pole',
  2 / 60,
  '°',
  0,
  "a pole on a bipod stands to 2' (common practice; held by hand 8')",
);
const POLE_LENGTH = assumed(
  'rover pole',
  2,
  'm',
  0,
  'the usual length, since the notes give none (common practice)',
);

export interface Budget {
  readonly horizontal: Maybe<Value>;
  readonly up: Maybe<Value>;
}

/** Standard uncertainties of one axis and of up, without the marks: what moves from one occupation to the next. */
export interface Occupation {
  readonly axis: Value;
  readonly up: Value;
}

/** What one occupation contributes: receivers over the distance, centring at both ends, the taped height. */
export function occupationSpread(
  setup: SetupValues,
  check: Pick<Check, 'name' | 'pole'>,
  rover: Rover | null,
  distance: Value,
): Occupation {
  const { plummet, bubble } = setup.setup;
  const arp = setup.height.arp;
  const horizontal = {
    a: RECEIVER_HORIZONTAL,
    b: RECEIVER_RATE,
    D: distance,
    p: plummet && !isHole(plummet) ? plummet : PLUMMET,
    β: bubble && !isHole(bubble) ? bubble : BUBBLE,
    H: isHole(arp) ? assumed('antenna height', 1.5, 'm', 0, 'no antenna height is known') : arp,
    τ: POLE_TILT,
    L: poleLength(check, rover),
  };
  const axis = compute(
    `standard uncertainty of ${check.name}, each horizontal axis`,
    'm',
    {
      symbol: 'u_axis',
      expression: '√(((a + b · D) / √2)² + p² + (tan(β / 4) · H)² + (tan(τ) · L)²)',
      evaluable: false,
      source: BUDGET_SOURCE,
    },
    exactly(horizontal),
    (v) =>
      Math.hypot(
        (v.a + v.b * v.D) / Math.SQRT2,
        v.p,
        Math.tan(toRadians(v.β / 4)) * v.H,
        Math.tan(toRadians(v.τ)) * v.L,
      ),
  );
  const height = assumed(
    'uncertainty of the antenna height',
    isHole(arp) ? 0.001 : (arp.sigma ?? 0.001),
    'm',
    0,
    'as computed from the tape',
  );
  const up = compute(
    `standard uncertainty of ${check.name}, up`,
    'm',
    { symbol: 'u_up', expression: '√((a + b · D)² + u_H²)', evaluable: true, source: BUDGET_SOURCE },
    exactly({ a: RECEIVER_VERTICAL, b: RECEIVER_RATE, D: distance, u_H: height }),
    (v) => Math.hypot(v.a + v.b * v.D, v.u_H),
  );
  return { axis, up };
}

/** The radius and the half-width that a right check stays within at the job's confidence; a hole where a mark's uncertainty is not stated. */
export function expectedWithin(
  occupation: Occupation,
  base: MarkValues,
  check: MarkValues,
  frame: Frame,
  name: string,
): Budget {
  const confidence = frame.confidence.value;
  return {
    horizontal: withMarks(
      'horizontal',
      occupation.axis,
      base,
      check,
      circularRadius(confidence),
      frame,
      name,
    ),
    up: withMarks('vertical', occupation.up, base, check, normalHalfWidth(confidence), frame, name),
  };
}

function withMarks(
  direction: 'horizontal' | 'vertical',
  spread: Value,
  base: MarkValues,
  check: MarkValues,
  factor: number,
  frame: Frame,
  name: string,
): Maybe<Value> {
  const marks = marksSpread(direction, base, check);
  if (isHole(marks)) return marks;
  const k = assumed(
    `factor at ${Math.round(frame.confidence.value * 1000) / 10} %`,
    factor,
    '',
    0,
    direction === 'horizontal'
      ? 'radius of a circular normal distribution'
      : 'half-width of a normal distribution',
  );
  return compute(
    `what ${name} stays within, ${direction === 'horizontal' ? 'horizontally' : 'up'}`,
    'm',
    { symbol: 'U', expression: 'k · √(u² + u_m²)', evaluable: true, source: BUDGET_SOURCE },
    exactly({ k, u: spread, u_m: marks }),
    (v) => v.k * Math.hypot(v.u, v.u_m),
  );
}

/** Marks of one source use what is said of them relative to one another, else both count in full. */
function marksSpread(
  direction: 'horizontal' | 'vertical',
  base: MarkValues,
  check: MarkValues,
): Maybe<Value> {
  const name = `marks ${base.mark.name} and ${check.mark.name}`;
  const sameSource = base.mark.source !== null && base.mark.source.text === check.mark.source?.text;
  const relative = sameSource
    ? larger(
        standardUncertainty(base.mark.relative, direction),
        standardUncertainty(check.mark.relative, direction),
      )
    : null;
  if (relative !== null)
    return assumed(name, relative, 'm', 0, 'stated as relative, both being of one source');
  const [one, other] =
    direction === 'horizontal'
      ? [base.sigmaHorizontal, check.sigmaHorizontal]
      : [base.sigmaVertical, check.sigmaVertical];
  if (one === null || other === null) {
    const silent = one === null ? base.mark : check.mark;
    return hole(`the ${direction} uncertainty of ${silent.name} is not stated`, silent.place);
  }
  if (base.mark === check.mark) return assumed(name, 0, 'm', 0, 'base and check are the same mark');
  return assumed(name, Math.hypot(one, other), 'm', 0, 'as stated for the two marks');
}

const larger = (one: number | null, other: number | null) =>
  one === null ? other : other === null ? one : Math.max(one, other);

function poleLength(check: Pick<Check, 'pole'>, rover: Rover | null): Value {
  const pole = check.pole ?? rover?.pole;
  return pole && !isHole(pole.length) ? pole.length : POLE_LENGTH;
}

/** A budget is a level, not a measurement: its own inputs are taken as they are. */
function exactly<Inputs extends Readonly<Record<string, Value>>>(inputs: Inputs): Inputs {
  const entries = Object.entries(inputs).map(([symbol, value]) => [
    symbol,
    value.sigma === 0 ? value : { ...value, sigma: 0, contributions: new Map(), unknown: [] },
  ]);
  return Object.fromEntries(entries) as Inputs;
}

const BUDGET_SOURCE =
  'law of propagation of uncertainty (JCGM 100:2008, 5.1.2); defaults are common practice';
