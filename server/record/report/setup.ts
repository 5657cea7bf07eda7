/** The part of a report about a setup: the height stack, and what was keyed against what should have been. */
import type { KeyedValues } from '../../derive/setups/keyed.ts';
import type { SetupValues } from '../../derive/setups/setup.ts';
import { clockTime } from '../../findings/words.ts';
import { isHole, type Maybe } from '../../quantities/value.ts';
import { heightStack, isDrawnToScale } from '../drawings/height-stack.ts';
import { element, type Child, type Markup } from '../drawings/markup.ts';
import { facts, figure, lineLink, section, shown, table, type Chapter } from './chapter.ts';
import { keyedRows, type Off, type ShownValue } from './keyed.ts';

export function setupSection(chapter: Chapter, values: SetupValues): Markup {
  const { setup, mark, antenna, keyed, tell } = values;
  return section(
    `Setup ${setup.name}${setup.on ? ` on ${setup.on.name}` : ''}`,
    facts([
      ['Written in', lineLink(chapter, setup.place)],
      mark ? ['Mark', [mark.mark.name, mark.mark.description ? `, ${mark.mark.description}` : '']] : null,
      mark?.mark.found ? ['Found', mark.mark.found.name] : null,
      antenna ? ['Antenna', [antenna.name, antenna.description ? `, ${antenna.description}` : '']] : null,
      antenna?.serial ? ['Serial', antenna.serial.name] : null,
      tell.datum ? ['Datum to key in', tell.datum] : null,
    ]),
    figure(
      chapter,
      (canvas) => heightStack(chapter.inspection, values, canvas),
      isDrawnToScale(values)
        ? 'Drawn to scale above the mark. The open bar is what should have been keyed, the hatched one what was.'
        : 'The antenna height is not known, so the tripod is a picture of any.',
    ),
    element('h3', {}, 'What was keyed against what should have been'),
    keyed.length === 0
      ? element('p', {}, 'Nothing is noted of what was keyed.')
      : keyed.map((state) => keyedTable(chapter, values, state)),
    tell.coarse
      ? element(
          'p',
          {},
          'The height to key rests on a coarse geoid model: good for finding blunders, not for keying.',
        )
      : null,
  );
}

function keyedTable(chapter: Chapter, values: SetupValues, keyed: KeyedValues): Markup {
  const { state } = keyed;
  const from = clockTime(state.from, chapter.inspection);
  const until = clockTime(state.until, chapter.inspection);
  const number = values.keyed.length > 1 ? `State ${state.number}: ` : '';
  const caption: Child = [
    `${number}keyed ${from ? `from ${from}` : 'at a time that is not noted'}${until ? ` until ${until}` : ''}, `,
    ...state.lines.slice(0, 1).map((line) => lineLink(chapter, line.place)),
  ];
  return table(
    [
      { head: 'Field' },
      { head: 'Should be', right: true },
      { head: 'Keyed', right: true },
      { head: 'Keyed is', right: true },
    ],
    keyedRows(values, keyed).map(({ field, should, told, off }) => [
      field,
      shownValue(chapter, should),
      shownValue(chapter, told),
      offMarkup(off),
    ]),
    { caption, stacked: true },
  );
}

function shownValue(chapter: Chapter, cell: Maybe<ShownValue> | null): Child {
  if (cell === null) return null;
  if (isHole(cell)) return element('span', { class: 'quiet' }, `not known: ${cell.hole}`);
  return cell.value ? shown(chapter, cell.value, () => cell.text) : cell.text;
}

function offMarkup(off: Maybe<Off> | null): Child {
  if (off === null) return null;
  if (isHole(off)) return element('span', { class: 'quiet' }, 'not known');
  return element('span', { class: off.right ? 'good' : 'bad' }, off.text);
}
