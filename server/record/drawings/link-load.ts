/** What each message of a stream takes of each second on the air, against the second that there is. */
import type { StreamValues } from '../../derive/link/stream.ts';
import type { Inspection } from '../../inspect.ts';
import type { SecondLoad } from '../../link/load.ts';
import { messageTitle } from '../../link/message-size.ts';
import { showNumber } from '../../quantities/show.ts';
import {
  box,
  drawing,
  emptyDrawing,
  hatching,
  isNarrow,
  SMALL,
  standsFor,
  stroke,
  words,
  type Canvas,
} from './canvas.ts';
import { group, type Markup } from './markup.ts';
import { fitted, textWidth } from './text.ts';

/** A look for each message, told apart without colour: fill, slanted lines this way or that, wide or narrow. */
const LOOKS = [
  { fill: 'fill-accent', step: 0, rising: true },
  { fill: 'fill-wash', step: 5, rising: true },
  { fill: 'fill-wash', step: 5, rising: false },
  { fill: 'fill-wash', step: 0, rising: true },
  { fill: 'fill-paper', step: 9, rising: true },
  { fill: 'fill-paper', step: 9, rising: false },
  { fill: 'fill-ink', step: 0, rising: true },
] as const;
type Look = (typeof LOOKS)[number];

const HEIGHT = 170;
const TOP = 26;
const LEFT = 34;
/** Seconds that are drawn; a longer period only repeats what they show. */
const MOST_SECONDS = { desk: 30, phone: 12 };

export function linkLoad(inspection: Inspection, values: StreamValues, canvas: Canvas): Markup {
  const title = `Load of the radio by the stream from ${values.name}, second by second`;
  const { load } = values;
  if (!load) return emptyDrawing(canvas, title, 'What is sent, or how fast the radio is, is not known.');
  const narrow = isNarrow(canvas);
  const seconds = load.seconds.slice(0, narrow ? MOST_SECONDS.phone : MOST_SECONDS.desk);
  const most = Math.max(1.1, 1.05 * load.fullest.airtime);
  const bottom = TOP + HEIGHT;
  const yOf = (airtime: number) => bottom - (airtime / most) * HEIGHT;
  const step = (canvas.width - LEFT) / seconds.length;
  const looks = new Map(
    values.messages.map(({ message }, index) => [
      message.number.name,
      LOOKS[index % LOOKS.length] ?? LOOKS[0],
    ]),
  );
  const legend = legendOf(inspection, values, looks, bottom + 34, canvas);
  return drawing(
    canvas,
    legend.bottom + 12,
    { title, description: described(values, load.seconds.length) },
    words('s on the air', 0, 8, { size: SMALL, tone: 'quiet' }),
    ...ticks(most).map((tick) =>
      group(
        stroke('faint', LEFT, yOf(tick), canvas.width, yOf(tick)),
        words(showNumber(tick, tick % 1 === 0 ? 0 : 1), LEFT - 6, yOf(tick), {
          size: SMALL,
          anchor: 'end',
          tone: 'quiet',
        }),
      ),
    ),
    ...seconds.map((second, index) => bar(second, LEFT + index * step, step, yOf, looks)),
    stroke('line', LEFT, bottom, canvas.width, bottom),
    // The second that there is, over the bars.
    stroke('firm', LEFT, yOf(1), canvas.width, yOf(1)),
    ...seconds.flatMap(({ second }, index) =>
      index % (seconds.length > 15 ? 5 : 2) === 0
        ? [
            words(String(second), LEFT + (index + 0.5) * step, bottom + 11, {
              size: SMALL,
              anchor: 'middle',
              tone: 'quiet',
            }),
          ]
        : [],
    ),
    legend.markup,
  );
}

const ticks = (most: number): number[] => {
  const step = most > 3 ? 1 : 0.5;
  return Array.from({ length: Math.floor(most / step) }, (_, index) => (index + 1) * step).filter(
    (tick, _, all) => all.length <= 8 || tick % Math.ceil(most / 8) === 0 || tick === 1,
  );
};

function bar(
  second: SecondLoad,
  x: number,
  step: number,
  yOf: (airtime: number) => number,
  looks: ReadonlyMap<string, Look>,
): Markup {
  const width = Math.max(2, step * 0.72);
  const left = x + (step - width) / 2;
  let airtime = 0;
  return group(
    ...second.messages.map((message) => {
      const foot = yOf(airtime);
      airtime += message.airtime;
      const head = yOf(airtime);
      const look = looks.get(String(message.number)) ?? LOOKS[0];
      return swatch(look, { x: left, y: head, width, height: foot - head });
    }),
  );
}

function swatch(
  look: Look,
  area: { readonly x: number; readonly y: number; readonly width: number; readonly height: number },
): Markup {
  const { x, y, width, height } = area;
  return group(
    box(look.fill, x, y, width, height),
    look.step > 0 && height > 1 ? hatching('hair', area, look.step, look.rising) : null,
    stroke('hair', x, y, x + width, y),
    stroke('hair', x, y, x, y + height),
    stroke('hair', x + width, y, x + width, y + height),
  );
}

function legendOf(
  { session }: Inspection,
  { messages }: StreamValues,
  looks: ReadonlyMap<string, Look>,
  top: number,
  canvas: Canvas,
): { readonly markup: Markup; readonly bottom: number } {
  const columns = isNarrow(canvas) ? 1 : 2;
  const width = canvas.width / columns;
  const rows = Math.ceil(messages.length / columns);
  const entries = messages.map(({ message, number }, index) => {
    const x = Math.floor(index / rows) * width;
    const y = top + (index % rows) * 18;
    const { name } = message.number;
    const title = messageTitle(number) ?? 'size not known';
    const room = width - 30 - textWidth(name, SMALL) - 8;
    return standsFor(
      canvas,
      session,
      message.place,
      `${name}: ${title}`,
      swatch(looks.get(name) ?? LOOKS[0], { x, y: y - 6, width: 18, height: 12 }),
      words(name, x + 26, y, { size: SMALL, tone: 'strong' }),
      words(fitted(title, SMALL, room), x + 26 + textWidth(name, SMALL) + 8, y, { size: SMALL }),
    );
  });
  return { markup: group(...entries), bottom: top + rows * 18 - 9 };
}

function described({ load, unknown, staggeredLoad }: StreamValues, period: number): string {
  if (!load) return '';
  const part = (airtime: number) => `${showNumber(airtime, 2)} s`;
  const without =
    unknown.length > 0 ? ` Without ${unknown.join(', ')}, whose size or rate is not known.` : '';
  const inTurn =
    staggeredLoad && staggeredLoad.fullest.airtime < load.fullest.airtime
      ? ` Taking turns, ${part(staggeredLoad.fullest.airtime)}.`
      : '';
  return `${showNumber(100 * load.averageAirtime, 0)} % of the time on the air on average, over a period of ${period} s; ${part(load.fullest.airtime)} in the fullest second.${inTurn}${without}`;
}
