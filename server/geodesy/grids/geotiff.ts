/**
 * Geoid grids as geodetic GeoTIFF files.
 *
 * Source: OGC 19-008r4, GeoTIFF standard 1.1; PROJ contributors, Geodetic TIFF grids (GTG) specification: the type of the
 * grid and each sample's meaning, scale and offset stand in the GDAL_METADATA tag; the ellipsoidal height is the
 * gravity-related height plus the value.
 */
import { refuse, isRefusal, type Refusal } from '../../quantities/refusal.ts';
import { plausible, type GeoidGrid } from './geoid-grid.ts';
import { readTiff, type TiffImage } from './tiff.ts';

export function readGeotiff(bytes: Uint8Array): GeoidGrid | Refusal {
  const images = readTiff(bytes);
  if (isRefusal(images)) return images;
  const full = images.filter((image) => ((image.numbers(SUBFILE)[0] ?? 0) & (REDUCED | MASK)) === 0);
  const [image] = full;
  if (image === undefined) return refuse('The GeoTIFF file holds only reduced images.');
  if (full.length > 1)
    return refuse(
      `The GeoTIFF file holds ${full.length} grids side by side; give the one that covers the job.`,
    );
  return gridOf(image);
}

const SUBFILE = 254;
const REDUCED = 1;
const MASK = 4;
const PIXEL_SCALE = 33550;
const TIEPOINT = 33922;
const GEO_KEYS = 34735;
const GDAL_METADATA = 42112;
const GDAL_NODATA = 42113;

function gridOf(image: TiffImage): GeoidGrid | Refusal {
  const keys = geoKeysOf(image.numbers(GEO_KEYS));
  if (keys.get(1024) !== 2)
    return refuse('The GeoTIFF file is not in geographic coordinates, latitude and longitude in degrees.');
  const items = metadataOf(image.text(GDAL_METADATA) ?? '');
  const type = items.find(({ name }) => name === 'TYPE')?.value;
  if (type !== 'VERTICAL_OFFSET_GEOGRAPHIC_TO_VERTICAL')
    return refuse(
      `The GeoTIFF file ${type === undefined ? 'does not say of what type it is' : `is of the type ${type}`}; a geoid is VERTICAL_OFFSET_GEOGRAPHIC_TO_VERTICAL.`,
    );
  const sample = sampleOf(items, image.samples);
  const about = (name: string, otherwise: string) =>
    items.find((item) => item.name === name && item.sample === sample)?.value ?? otherwise;
  const unit = about('UNITTYPE', 'metre');
  if (!/^met(re|er)s?$|^m$/i.test(unit))
    return refuse(`The GeoTIFF file’s values are in “${unit}”, not in metres.`);
  const [scale, offset] = [Number(about('SCALE', '1')), Number(about('OFFSET', '0'))];
  const noData = noDataOf(image.text(GDAL_NODATA));
  const frame = frameOf(image, keys.get(1025) === 2);
  if (isRefusal(frame)) return frame;
  const last = image.height - 1;
  return plausible({
    ...frame,
    node(row, column) {
      const raw = image.value(last - row, column % image.width, sample);
      const value = raw * scale + offset;
      return isSame(raw, noData) || !(Math.abs(value) < 200) ? undefined : value;
    },
  });
}

/** No data is printed with more or fewer digits than its four bytes hold. */
const isSame = (raw: number, noData: number | undefined) =>
  noData !== undefined && (raw === noData || raw === Math.fround(noData));

const noDataOf = (text: string | undefined) => {
  const value = Number(text?.trim() || NaN);
  return Number.isFinite(value) ? value : undefined;
};

function frameOf(image: TiffImage, pointRegistered: boolean): GeoidGrid | Refusal {
  const [longitudeStep = NaN, latitudeStep = NaN] = image.numbers(PIXEL_SCALE);
  const [i = NaN, j = NaN, , x = NaN, y = NaN] = image.numbers(TIEPOINT);
  // Where a pixel is an area, the tie point is its corner and the value belongs to its middle.
  const half = pointRegistered ? 0 : 0.5;
  const west = x + (half - i) * longitudeStep;
  const north = y - (half - j) * latitudeStep;
  if (!Number.isFinite(west + north))
    return refuse('The GeoTIFF file does not say where on the earth it lies.');
  return {
    format: 'GeoTIFF',
    south: north - (image.height - 1) * latitudeStep,
    west,
    latitudeStep,
    longitudeStep,
    rows: image.height,
    columns: image.width,
    node: () => undefined,
  };
}

function geoKeysOf(numbers: readonly number[]): ReadonlyMap<number, number> {
  const keys = new Map<number, number>();
  for (let at = 4; at + 3 < numbers.length; at += 4) {
    const [key = 0, place = 0, , value = 0] = numbers.slice(at, at + 4);
    if (place === 0) keys.set(key, value);
  }
  return keys;
}

interface MetadataItem {
  readonly name: string;
  readonly sample: number | undefined;
  readonly value: string;
}

function metadataOf(xml: string): readonly MetadataItem[] {
  return [...xml.matchAll(/<Item ([^<>]{1,400})>([^<]{0,400})<\/Item>/g)].map(
    ([, attributes = '', value = '']) => {
      const sample = /sample="(\d{1,3})"/.exec(attributes)?.[1];
      return {
        name: /name="([^"]{1,100})"/.exec(attributes)?.[1]?.toUpperCase() ?? '',
        sample: sample === undefined ? undefined : Number(sample),
        value: value.trim(),
      };
    },
  );
}

/** The sample that is described as the geoid's, or the only one. */
function sampleOf(items: readonly MetadataItem[], samples: number): number {
  const described = items.find(({ name, value }) => name === 'DESCRIPTION' && value === 'geoid_undulation');
  return Math.min(described?.sample ?? 0, samples - 1);
}
