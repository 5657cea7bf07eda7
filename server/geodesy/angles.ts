/** Degrees and radians, and angles brought into their usual range. */

export const RADIANS_PER_DEGREE = Math.PI / 180;

export const toRadians = (inDegrees: number) => inDegrees * RADIANS_PER_DEGREE;
export const toDegrees = (inRadians: number) => inRadians / RADIANS_PER_DEGREE;

/** The same direction from −180° (excluded) to 180°. */
export const halfTurn = (inDegrees: number) => {
  const remainder = inDegrees % 360;
  if (remainder > 180) return remainder - 360;
  return remainder <= -180 ? remainder + 360 : remainder;
};

/** The same direction from 0° to 360° (excluded), as an azimuth is written. */
export const fullTurn = (inDegrees: number) => {
  const remainder = inDegrees % 360;
  return remainder < 0 ? (remainder + 360) % 360 : remainder;
};
