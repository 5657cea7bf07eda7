import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { freePlace, rowsOf, spread, takenBoxes, type Box } from './spread.ts';

describe('labels along a line', () => {
  it('stay where they want to be when there is room', () => {
    expect(
      spread(
        [
          { at: 50, size: 10 },
          { at: 20, size: 10 },
        ],
        0,
        100,
      ),
    ).toEqual([50, 20]);
  });

  it('never overlap, keep their order, and stay inside where they all fit', () => {
    const wishes = fc.array(
      fc.record({ at: fc.integer({ min: -50, max: 450 }), size: fc.integer({ min: 1, max: 30 }) }),
      { maxLength: 12 },
    );
    fc.assert(
      fc.property(wishes, (labels) => {
        const middles = spread(labels, 0, 400);
        const boxes = labels
          .map(({ at, size }, index) => ({ at, size, middle: middles[index] ?? NaN }))
          .sort((one, other) => one.middle - other.middle);
        boxes.forEach((box, index) => {
          const next = boxes[index + 1];
          expect(box.middle - box.size / 2).toBeGreaterThanOrEqual(-1e-9);
          expect(box.middle + box.size / 2).toBeLessThanOrEqual(400 + 1e-9);
          if (!next) return;
          expect(box.middle + box.size / 2).toBeLessThanOrEqual(next.middle - next.size / 2 + 1e-9);
          expect(box.at).toBeLessThanOrEqual(next.at);
        });
      }),
    );
  });
});

describe('labels in rows', () => {
  it('share a row only where they do not overlap, and put the earlier one beyond the later', () => {
    const label = fc
      .record({ x: fc.integer({ min: 0, max: 300 }), width: fc.integer({ min: 1, max: 120 }) })
      .map(({ x, width }) => ({ x, from: x, to: x + width }));
    fc.assert(
      fc.property(fc.array(label, { maxLength: 14 }), (labels) => {
        const rows = rowsOf(labels);
        labels.forEach((one, index) =>
          labels.forEach((other, second) => {
            const overlap = index !== second && one.from < other.to && other.from < one.to;
            if (!overlap) return;
            expect(rows[index]).not.toBe(rows[second]);
            if (one.x < other.x) expect(rows[index] ?? 0).toBeGreaterThan(rows[second] ?? 0);
          }),
        );
      }),
    );
  });
});

describe('a label on the plane', () => {
  const field: Box = { x: 0, y: 0, width: 200, height: 100 };
  it('touches nothing that is there', () => {
    const taken = takenBoxes([{ x: 100, y: 30, width: 60, height: 40 }]);
    const place = freePlace({ x: 90, y: 50 }, { width: 40, height: 14 }, 8, taken, field);
    expect(place && place.x + place.width <= 100).toBe(true);
  });
  it('is left out where there is no room', () => {
    expect(freePlace({ x: 90, y: 50 }, { width: 400, height: 14 }, 8, takenBoxes(), field)).toBeNull();
  });
});
