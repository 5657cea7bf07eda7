/** Degrees as degrees, minutes and seconds to five decimals, the way they are keyed and written. */
export interface Sexagesimal {
  readonly negative: boolean;
  readonly degrees: number;
  /** Two digits. */
  readonly minutes: string;
  /** Two digits, a point, five digits. */
  readonly seconds: string;
}

export function toSexagesimal(angle: number): Sexagesimal {
  const units = Math.round(Math.abs(angle) * 3.6e8);
  const whole = Math.floor(units / 6e6);
  return {
    negative: angle < 0,
    degrees: Math.floor(whole / 60),
    minutes: String(whole % 60).padStart(2, '0'),
    seconds: ((units % 6e6) / 1e5).toFixed(5).padStart(8, '0'),
  };
}

export function fromSexagesimal(angle: Sexagesimal): number {
  const size = angle.degrees + Number(angle.minutes) / 60 + Number(angle.seconds) / 3600;
  return angle.negative ? -size : size;
}
