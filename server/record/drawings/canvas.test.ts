import { expect, it } from 'vitest';
import { emptyDrawing, verdictSign } from './canvas.ts';

/** The numbers of the first attribute of that name. */
const numbersOf = (markup: string, ...names: string[]) =>
  names.map((name) => Number(new RegExp(` ${name}="([-\\d.]+)"`).exec(markup)?.[1]));

it('a sign of a verdict stands around its place', () => {
  expect(numbersOf(verdictSign('passes', 10, 20, 7).markup, 'cx', 'cy', 'r')).toEqual([10, 20, 7]);
  expect(numbersOf(verdictSign('undecided', 10, 20, 7).markup, 'cx', 'cy', 'r')).toEqual([10, 20, 7]);
  // A square from 10 − 7 and 20 − 7, twice 7 wide and high.
  expect(numbersOf(verdictSign('fails', 10, 20, 7).markup, 'x', 'y', 'width', 'height')).toEqual([
    3, 13, 14, 14,
  ]);
});

it('a drawing of nothing says why without the backticks of a text', () => {
  const { markup } = emptyDrawing(
    { width: 600, link: null },
    'The day',
    'No setup says when it began with `at`.',
  );
  expect(markup).toContain('“at”');
  expect(markup).not.toMatch(/`|&#96;/);
});
