/** The register's grids that are not computed here, each with the reason; the list is whole for the current systems. */

/** Why positions in a grid are refused, as a sentence; undefined where they are computed. */
export function uncomputedBecause(code: string, name: string): string | undefined {
  const reason = REASONS.find(({ codes }) => codes.includes(code))?.reason;
  return reason && `EPSG:${code} (${name}) is refused: ${reason}.`;
}

const method = (name: string, reason: string) => `its method, ${name}, ${reason}`;
const NOT_WRITTEN = 'is not computed here';
const NOT_CARRIED = 'the register carries it by name only, without its parameters';

interface Uncomputed {
  readonly reason: string;
  readonly codes: readonly string[];
}

const REASONS: readonly Uncomputed[] = [
  {
    reason: method('Lambert Conic Conformal (West Orientated)', NOT_WRITTEN),
    codes: '2218 2221 2296 2299 2301 2303 2304 2305 2306 2307 3052 3053 3144 3145 3173'.split(' '),
  },
  { reason: method('Krovak Modified', NOT_WRITTEN), codes: ['5224', '5225', '5515', '5516'] },
  { reason: method('Polar Stereographic (variant C)', NOT_WRITTEN), codes: ['2985', '2986'] },
  { reason: method('Bonne (South Orientated)', NOT_WRITTEN), codes: ['2963', '5017'] },
  { reason: method('Laborde Oblique Mercator', NOT_WRITTEN), codes: ['8441', '29701'] },
  { reason: method('Lambert Conic Near-Conformal', NOT_WRITTEN), codes: ['22700'] },
  { reason: method('Modified Azimuthal Equidistant', NOT_WRITTEN), codes: ['3295'] },
  { reason: method('Guam Projection', NOT_WRITTEN), codes: ['3993'] },
  { reason: method('Tunisia Mining Grid', NOT_WRITTEN), codes: ['22300'] },
  {
    reason: 'it stands for all UTM zones at once; name the zone’s own system',
    codes: ['32600', '32700'],
  },
  {
    reason: 'it is the web map’s grid, which treats the ellipsoid as a sphere and is no grid to survey in',
    codes: ['3857'],
  },
  { reason: NOT_CARRIED, codes: ['2000', '9549', '20047', '20050'] },
];
