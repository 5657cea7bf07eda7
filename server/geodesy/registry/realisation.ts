/**
 * Which datums are realised by satellite positioning, told from the ellipsoid and a list of exceptions.
 *
 * A datum on the GRS 80 or WGS 84 ellipsoid, or on one of the two later global ones, is realised by GNSS unless it is
 * listed here; one on any other ellipsoid is not. The exceptions follow the EPSG dataset's remarks on each datum.
 */
import type { Ellipsoid } from '../ellipsoid.ts';
import type { Realisation } from '../system.ts';

export function realisationOf(name: string, ellipsoid: Ellipsoid): Realisation {
  if (NOT_SAID.test(name)) return 'unknown';
  if (TERRESTRIAL.has(name) || name.endsWith('-IRF')) return 'terrestrial';
  return GLOBAL_ELLIPSOIDS.has(ellipsoid.name) ? 'gnss' : 'terrestrial';
}

export const cautionOf = (name: string): string | undefined => CAUTIONS[name];

const GLOBAL_ELLIPSOIDS: ReadonlySet<string> = new Set([
  'GRS 1980',
  'WGS 84',
  'CGCS2000',
  'GSK-2011',
  'PZ-90',
]);

const NOT_SAID = /^(unknown|unnamed|undefined|not[ _]specified)/i;

/** On a global ellipsoid, yet with the coordinates of a triangulation or of a grid made for one piece of work. */
const TERRESTRIAL: ReadonlySet<string> = new Set([
  'GGRS87',
  'Israel 1993',
  'VN-2000',
  'KUDAMS',
  'Korean 1995',
  'ST87 Ouvea',
  'Nakhl-e Ghanem',
  'IG05 Intermediate CRS',
  'IG05/12 Intermediate CRS',
  'LTF2004(C)',
  'LTF2004(G)',
]);

const CAUTIONS: Readonly<Record<string, string>> = {
  NAD83: 'NAD83 without a realisation: those of 1986, HARN, CORS96 and 2011 differ by up to a metre.',
  'WGS 84':
    'WGS 84 names several realisations since 1984 that differ by up to metres; the later ones follow the ITRF to centimetres.',
  ETRS89: 'ETRS89 names several realisations that differ by some centimetres.',
  'NAD83(CSRS)': 'NAD83(CSRS) names several versions, whose coordinates also differ by the epoch.',
};
