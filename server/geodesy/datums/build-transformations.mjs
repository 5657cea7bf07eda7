/** Builds parameters.ts from PROJ's copy of the EPSG dataset; needs the sqlite3 command: build-transformations.mjs [proj.db] */
import { execFileSync } from 'node:child_process';
import { writeFileSync } from 'node:fs';

const database = process.argv[2] ?? '/usr/share/proj/proj.db';
const rows = query(`
  SELECT h.code, h.name, s.name AS source, t.name AS target, h.method_code AS method, h.accuracy,
    h.tx, h.ty, h.tz, ut.name AS lengthUnit, h.rx, h.ry, h.rz, ur.name AS angleUnit,
    h.scale_difference AS ds, us.name AS scaleUnit,
    h.rate_tx AS dtx, h.rate_ty AS dty, h.rate_tz AS dtz, udt.name AS lengthRate,
    h.rate_rx AS drx, h.rate_ry AS dry, h.rate_rz AS drz, udr.name AS angleRate,
    h.rate_scale_difference AS dds, uds.name AS scaleRate, h.epoch,
    e.description AS area, e.south_lat AS south, e.west_lon AS west, e.north_lat AS north, e.east_lon AS east
  FROM helmert_transformation_table h
  JOIN geodetic_crs s ON s.auth_name = h.source_crs_auth_name AND s.code = h.source_crs_code
  JOIN geodetic_crs t ON t.auth_name = h.target_crs_auth_name AND t.code = h.target_crs_code
  LEFT JOIN unit_of_measure ut ON ut.auth_name = h.translation_uom_auth_name AND ut.code = h.translation_uom_code
  LEFT JOIN unit_of_measure ur ON ur.auth_name = h.rotation_uom_auth_name AND ur.code = h.rotation_uom_code
  LEFT JOIN unit_of_measure us ON us.auth_name = h.scale_difference_uom_auth_name AND us.code = h.scale_difference_uom_code
  LEFT JOIN unit_of_measure udt ON udt.auth_name = h.rate_translation_uom_auth_name AND udt.code = h.rate_translation_uom_code
  LEFT JOIN unit_of_measure udr ON udr.auth_name = h.rate_rotation_uom_auth_name AND udr.code = h.rate_rotation_uom_code
  LEFT JOIN unit_of_measure uds ON uds.auth_name = h.rate_scale_difference_uom_auth_name AND uds.code = h.rate_scale_difference_uom_code
  JOIN usage u ON u.object_table_name = 'helmert_transformation' AND u.object_auth_name = h.auth_name AND u.object_code = h.code
  JOIN extent e ON e.auth_name = u.extent_auth_name AND e.code = u.extent_code
  WHERE h.auth_name = 'EPSG' AND h.deprecated = 0 AND h.accuracy < 999
    AND h.method_code IN (9603, 9606, 9607, 1031, 1032, 1033, 1053, 1054, 1056, 1057)
  GROUP BY h.code
  ORDER BY h.code`);
const version = query("SELECT value FROM metadata WHERE key = 'EPSG.VERSION'")[0].value;

const areas = new Map();
const lines = rows.map((row) =>
  [
    row.code,
    row.name,
    row.source,
    row.target,
    row.accuracy,
    areaOf(row),
    numbers([row.tx, row.ty, row.tz], row.lengthUnit),
    signed([row.rx, row.ry, row.rz], row),
    numbers([row.ds], row.scaleUnit),
    row.epoch ?? '',
    ...(row.epoch === null
      ? []
      : [
          numbers([row.dtx, row.dty, row.dtz], row.lengthRate),
          signed([row.drx, row.dry, row.drz], row, true),
          numbers([row.dds], row.scaleRate),
        ]),
  ].join('|'),
);

const block = (name, text) => `export const ${name} = \`\n${text.join('\n')}\n\`;\n`;
writeFileSync(
  new URL('parameters.ts', import.meta.url),
  `/**
 * Published transformations between datums, one a line; built by build-transformations.mjs, not written by hand.
 *
 * From the EPSG Geodetic Parameter Dataset ${version}, owned by IOGP and used under its terms of use, as it comes with PROJ.
 */

/** name | south west north east */
${block('AREAS', [...areas.keys()])}
/**
 * code | name | from | to | accuracy in metres | area | translations in metres | rotations in arc-seconds, in the
 * position vector convention | scale difference in ppm | reference epoch | rates of the same, a year
 */
${block('TRANSFORMATIONS', lines)}`,
);
console.log(`${lines.length} transformations`);

function query(sql) {
  return JSON.parse(execFileSync('sqlite3', ['-json', database, sql], { maxBuffer: 1 << 26 }).toString());
}

function areaOf({ area, south, west, north, east }) {
  const row = `${area.replace(/[`\r\n]+/g, ' ')}|${south} ${west} ${north} ${east}`;
  if (!areas.has(row)) areas.set(row, areas.size);
  return areas.get(row);
}

/** To metres, arc-seconds and ppm, a year where they are rates. */
function factorOf(unit) {
  const factors = {
    metre: 1,
    millimetre: 1e-3,
    centimetre: 1e-2,
    'arc-second': 1,
    'milliarc-second': 1e-3,
    radian: 648000 / Math.PI,
    microradian: 0.648 / Math.PI,
    'centesimal second': 0.324,
    'parts per million': 1,
    'parts per billion': 1e-3,
    unity: 1e6,
  };
  if (unit === null) return 0;
  const factor = factors[unit.replace(/ per year$/, '')] ?? factors[unit.replace(/s per year$/, '')];
  if (factor === undefined) throw new Error(`unit ${unit}`);
  return factor;
}

function numbers(values, unit) {
  const factor = factorOf(unit);
  return values.map((value) => Number(((value ?? 0) * factor).toPrecision(12)) + 0).join(' ');
}

/** Methods 9607, 1032, 1056 and 1057 turn the frame; turned about, they are the position vector's. */
function signed(values, row, rate = false) {
  const sign = [9607, 1032, 1056, 1057].includes(row.method) ? -1 : 1;
  return numbers(
    values.map((value) => sign * (value ?? 0)),
    rate ? row.angleRate : row.angleUnit,
  );
}
