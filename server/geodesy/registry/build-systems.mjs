/** Builds systems.ts, the compact register of coordinate reference systems, from the package epsg-index. */
import { createRequire } from 'node:module';
import { writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

const index = createRequire(import.meta.url)('epsg-index/all.json');
// Codes from 32768 are not the EPSG dataset's, and these few were withdrawn from it long ago.
const WITHDRAWN = new Set(
  '20062 20063 24721 26788 26789 26790 31491 31492 31493 31494 31495 32059 32060'.split(' '),
);
const entries = Object.values(index)
  .filter(({ code }) => Number(code) < 32768 && !WITHDRAWN.has(code))
  .sort((a, b) => Number(a.code) - Number(b.code));

const AXES = axesByCode({
  nw: '2218 2221 2296 2299 2301 2303-2307 3144 3145 3173',
  sw: '2963 5017 5224 5515 8044 8045',
  wn: '3052 3053',
  en: '2985 2986',
  ne: '3139 5169-5172 5482 6244-6275 9895 27391-27398 29701 29702 31251-31253 31281-31283 31288-31290 32661 32761',
});

const areas = table();
const ellipsoids = table();
const units = table();
const datums = table();
const datumByName = new Map();

for (const entry of entries) if (entry.kind === 'CRS-GEOGCRS') rememberDatum(entry);

const lines = entries.map(line).filter((text) => text !== undefined);

const target = fileURLToPath(new URL('systems.ts', import.meta.url));
const block = (name, rows) => `export const ${name} = \`\n${rows.map(clean).join('\n')}\n\`;\n`;
writeFileSync(
  target,
  `/**
 * The register of coordinate reference systems, one a line; built by build-systems.mjs, not written by hand.
 *
 * From epsg-index 2.0.0, Copyright (c) 2023, Jannis R, ISC licence: permission to use, copy, modify, and/or distribute
 * this software for any purpose with or without fee is granted, provided that the copyright notice and this permission
 * notice appear in all copies. It is provided "as is", without warranty of any kind. The parameters in it are those of
 * the EPSG Geodetic Parameter Dataset, owned by IOGP and used under its terms of use.
 */

/** name | south west north east */
${block('AREAS', areas.rows)}
/** name | semi-major axis in metres | inverse flattening */
${block('ELLIPSOIDS', ellipsoids.rows)}
/** name | metres */
${block('UNITS', units.rows)}
/** name | geographic system | ellipsoid | prime meridian */
${block('DATUMS', datums.rows)}
/**
 * code | kind | name | area | then, for P (projected), datum | unit | axes | PROJ parameters; for G (geographic),
 * H (geographic with height) and C (geocentric), datum; for V (vertical), datum's name | unit | axis; for K (compound),
 * horizontal | vertical.
 */
${block('SYSTEMS', lines)}`,
);

function line(entry) {
  const head = (kind) => [entry.code, kind, entry.name, areaOf(entry)];
  switch (entry.kind) {
    case 'CRS-PROJCRS':
      return [...head('P'), datumOf(entry), unitOf(entry), axesOf(entry), projectionOf(entry)].join('|');
    case 'CRS-GEOGCRS':
      return [...head('G'), datumOf(entry)].join('|');
    case 'CRS-GEOG3DCRS':
      return [...head('H'), datumOf(entry)].join('|');
    case 'CRS-GCENCRS':
      return [...head('C'), datumOf(entry)].join('|');
    case 'CRS-VERTCRS':
      return [...head('V'), ...verticalOf(entry)].join('|');
    case 'CRS-COMPOUNDCRS':
      return partsOf(entry) && [...head('K'), ...partsOf(entry)].join('|');
    default:
      return undefined;
  }
}

/** Lists of dozens of counties say less than the region before them, and fill a hover. */
function shortened(area) {
  return area.replace(/ - (counties|parishes|boroughs)( of)? [^|]{120,}$/i, '');
}

function areaOf({ area, bbox }) {
  if (!bbox) return '';
  const [north, west, south, east] = bbox;
  return areas.add(`${shortened(area ?? '')}|${south} ${west} ${north} ${east}`);
}

function rememberDatum(entry) {
  if (datumByName.has(entry.name)) return;
  const primeMeridian = meridianOf(entry);
  const ellipsoid = ellipsoidOf(entry);
  if (ellipsoid !== undefined)
    datumByName.set(entry.name, datums.add([entry.name, entry.code, ellipsoid, primeMeridian].join('|')));
}

/** By the name of the geographic system in its WKT, else by the first part of its own name, else a datum of its own. */
function datumOf(entry) {
  const name = entry.wkt?.match(/GEOGCS\["([^"]+)"/)?.[1] ?? entry.name.split(' / ')[0];
  const known = datumByName.get(name);
  if (known !== undefined) return known;
  const ellipsoid = ellipsoidOf(entry);
  if (ellipsoid === undefined) return '';
  const primeMeridian = meridianOf(entry);
  return datums.add([name, '', ellipsoid, primeMeridian].join('|'));
}

function ellipsoidOf({ wkt, proj4 }) {
  const spheroid = wkt?.match(/SPHEROID\["([^"]+)",([^,\]]+),([^,\]]+)/);
  if (spheroid) return ellipsoids.add(`${spheroid[1]}|${spheroid[2]}|${spheroid[3]}`);
  const named =
    proj4?.match(/\+ellps=(\S+)/)?.[1] ??
    { WGS84: 'WGS84', NAD83: 'GRS80', NAD27: 'clrk66' }[proj4?.match(/\+datum=(\S+)/)?.[1]];
  const byName = {
    GRS80: 'GRS 1980|6378137|298.257222101',
    WGS84: 'WGS 84|6378137|298.257223563',
    bessel: 'Bessel 1841|6377397.155|299.1528128',
    intl: 'International 1924|6378388|297',
    clrk66: 'Clarke 1866|6378206.4|294.978698213898',
    krass: 'Krassowsky 1940|6378245|298.3',
    clrk80ign: 'Clarke 1880 (IGN)|6378249.2|293.466021293627',
    bess_nam: 'Bessel Modified|6377492.018|299.1528128',
  }[named];
  if (byName) return ellipsoids.add(byName);
  const axis = proj4?.match(/\+a=(\S+)/)?.[1];
  const inverse = proj4?.match(/\+rf=(\S+)/)?.[1];
  const minor = proj4?.match(/\+b=(\S+)/)?.[1];
  if (axis === undefined || (inverse === undefined && minor === undefined)) return undefined;
  return ellipsoids.add(`${axis} m|${axis}|${inverse ?? (axis === minor ? 0 : axis / (axis - minor))}`);
}

/** PROJ's named prime meridians, with the Greenwich longitudes of the EPSG dataset; Paris at 2°20′14.025″. */
function meridianOf({ wkt, proj4 }) {
  const inWkt = wkt?.match(/PRIMEM\["([^"]*)",([^,\]]+)/);
  if (inWkt && inWkt[1] !== 'Paris') return inWkt[2];
  const given = inWkt ? 'paris' : proj4?.match(/\+pm=(\S+)/)?.[1];
  const named = {
    lisbon: '-9.13190611111111',
    paris: '2.33722916666667',
    bogota: '-74.0809166666667',
    madrid: '-3.687375',
    rome: '12.4523333333333',
    bern: '7.43958333333333',
    jakarta: '106.807719444444',
    ferro: '-17.6666666666667',
    brussels: '4.367975',
    stockholm: '18.0582777777778',
    athens: '23.7163375',
    oslo: '10.7229166666667',
  };
  return named[given] ?? given ?? '0';
}

function unitOf({ wkt, proj4 }) {
  const inWkt = wkt && [...wkt.matchAll(/UNIT\["([^"]+)",([^,\]]+)/g)].at(-1);
  if (inWkt) return units.add(`${inWkt[1]}|${exact(inWkt[1], inWkt[2])}`);
  const named = {
    m: 'metre|1',
    'us-ft': `US survey foot|${exact('US survey foot')}`,
    ft: 'foot|0.3048',
    link: 'link|0.201168',
  };
  const short = proj4?.match(/\+units=(\S+)/)?.[1];
  const factor = proj4?.match(/\+to_meter=(\S+)/)?.[1];
  return units.add(named[short] ?? (factor ? `unit of ${factor} m|${factor}` : 'metre|1'));
}

/** The US survey foot is 1200/3937 m by definition; the register prints 15 digits of it. */
function exact(name, printed) {
  return name === 'US survey foot' ? 1200 / 3937 : printed;
}

/**
 * The two first letters of each axis in its own order. WKT names them only where they are east, north; PROJ only where
 * they count west or south; the others, which neither tells, are listed after the EPSG dataset.
 */
function axesOf({ code, wkt, proj4 }) {
  if (AXES[code]) return AXES[code];
  const inProj = proj4?.match(/\+axis=(\w\w)/)?.[1];
  if (inProj) return inProj;
  if (wkt && /AXIS\["[^"]*",EAST\],AXIS\["[^"]*",NORTH\]/.test(wkt)) return 'en';
  if (/\+proj=(stere|laea)\b.*\+lat_0=-?90\b/.test(proj4 ?? '')) return 'en';
  return wkt ? 'ne' : 'en';
}

function axesByCode(listed) {
  const codes = (range) => {
    const [first, last = first] = range.split('-').map(Number);
    return Array.from({ length: last - first + 1 }, (_, step) => String(first + step));
  };
  return Object.fromEntries(
    Object.entries(listed).flatMap(([axes, ranges]) =>
      ranges
        .split(' ')
        .flatMap(codes)
        .map((code) => [code, axes]),
    ),
  );
}

function projectionOf({ proj4 }) {
  if (!proj4) return '';
  const apart = /^\+(towgs84|nadgrids|units|to_meter|vunits|axis|datum|ellps|a|b|rf|type|no_defs|pm)(=|$)/;
  return proj4
    .replace(/"[^"]*"/g, '')
    .split(/\s+/)
    .filter((word) => word !== '' && !apart.test(word))
    .map((word) => word.replace(/^\+/, ''))
    .join(' ');
}

function verticalOf(entry) {
  const datum =
    entry.wkt?.match(/VERT_DATUM\["([^"]+)"/)?.[1] ?? entry.name.replace(/ (height|depth).*$/, '');
  return [datum, unitOf(entry), /depth/i.test(entry.name) || /,DOWN\]/.test(entry.wkt ?? '') ? 'd' : 'u'];
}

function partsOf({ name, wkt }) {
  const authorities = wkt && [...wkt.matchAll(/AUTHORITY\["EPSG","(\d+)"\]/g)].map((match) => match[1]);
  const byName = (text, kinds) =>
    entries.find((other) => other.name === text && kinds.includes(other.kind))?.code;
  const [horizontal, vertical] = name.split(' + ');
  const first = horizontal && byName(horizontal, ['CRS-PROJCRS', 'CRS-GEOGCRS']);
  const second = vertical && byName(vertical, ['CRS-VERTCRS']);
  return first && second && authorities !== null ? [first, second] : undefined;
}

function table() {
  const places = new Map();
  return {
    add(row) {
      const known = places.get(row);
      if (known !== undefined) return known;
      places.set(row, places.size);
      return places.size - 1;
    },
    get rows() {
      return [...places.keys()];
    },
  };
}

/** No backquote or dollar brace may break the literal; no line break may break the line. */
function clean(row) {
  return row
    .replace(/`/g, "'")
    .replace(/\$\{/g, '$ {')
    .replace(/[\r\n]+/g, ' ');
}
