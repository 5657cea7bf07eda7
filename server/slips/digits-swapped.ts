/** Two neighbouring digits of a keyed number changed places. */
import { showAngle } from '../quantities/show.ts';
import { swappedDigits } from './digits.ts';
import { placeOf } from './grid-told.ts';
import type { Right } from './situation.ts';
import type { Place, Slip, Way } from './slip.ts';

export const digitsSwapped: Slip = {
  name: 'digits-swapped',
  code: 'number/digits-swapped',
  prior: 0.1,
  look: 'the keyed numbers, digit by digit, on the receiver',
  ways: ({ right }) => [
    ...swapped(right.antennaHeight, 'antenna height', (antennaHeight) => ({ antennaHeight })),
    ...swapped(right.height, 'height', (height) => ({ height })),
    ...(right.grid ? gridSwaps(right.grid) : angleSwaps(right)),
  ],
};

/** What the keyed digits would be if two neighbours are put back, where that is the right number within `tolerance`. */
export function swapBack(typed: string, right: number, tolerance: number): string | null {
  const found = swappedDigits(typed).find((text) => Math.abs(Number(text) - Math.abs(right)) <= tolerance);
  return found === undefined ? null : `two digits changed places, ${typed} for ${found}`;
}

type TellNumber = (value: number) => { antennaHeight: number } | { height: number };

function swapped(value: number | null, what: string, told: TellNumber): Way[] {
  if (value === null) return [];
  const typed = value.toFixed(3);
  return swappedDigits(typed).map((text) => ({
    says: `two digits of the ${what} changed places, ${text} m for ${typed} m`,
    effect: { on: 'told', told: told(Number(text)) },
  }));
}

function gridSwaps({ system, east, north }: NonNullable<Right['grid']>): Way[] {
  const ways = (value: number, letter: string, place: (swapped: number) => ReturnType<typeof placeOf>) => {
    const typed = value.toFixed(3);
    return swappedDigits(typed).flatMap((text): Way[] => {
      const told = place(Number(text));
      if (!told) return [];
      return [
        {
          says: `two digits changed places, ${text} m ${letter} for ${typed} m ${letter}`,
          effect: { on: 'told', told: { place: told } },
        },
      ];
    });
  };
  return [
    ...ways(east, 'E', (value) => placeOf(system, value, north)),
    ...ways(north, 'N', (value) => placeOf(system, east, value)),
  ];
}

function angleSwaps({ place }: Right): Way[] {
  if (!place) return [];
  const ways = (angle: number, positive: 'N' | 'E', told: (swapped: number) => Place) => {
    const typed = showAngle(angle, positive);
    return swappedDigits(typed).flatMap((text): Way[] => {
      const [degrees = NaN, minutes = NaN, seconds = NaN] = (text.match(/[\d.]+/g) ?? []).map(Number);
      const size = degrees + minutes / 60 + seconds / 3600;
      if (!(minutes < 60 && seconds < 60 && size <= (positive === 'N' ? 90 : 180))) return [];
      return [
        {
          says: `two digits changed places, ${text} for ${typed}`,
          effect: { on: 'told', told: { place: told(angle < 0 ? -size : size) } },
        },
      ];
    });
  };
  return [
    ...ways(place.latitude, 'N', (latitude) => ({ ...place, latitude })),
    ...ways(place.longitude, 'E', (longitude) => ({ ...place, longitude })),
  ];
}
