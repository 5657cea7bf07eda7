/**
 * LandXML 1.2 as a browser's own parser reads it, held against what the schema says of these elements. The schema itself
 * is in no package that can be had, so its rules are written down here from memory; they are those of the few elements that
 * are written, and no more.
 */
import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { folderWith, tribrach } from '../command-line-run.ts';
import { REPAIRED_DAY } from '../repaired-day.ts';
import { hasChromium, launchChromium, sayWhenMissing } from './chromium.ts';

sayWhenMissing('LandXML by an XML parser');

interface Element {
  readonly name: string;
  readonly namespace: string | null;
  readonly attributes: Readonly<Record<string, string>>;
  readonly text: string;
  readonly children: readonly Element[];
}
interface Rule {
  readonly required: Readonly<Record<string, RegExp>>;
  readonly optional: Readonly<Record<string, RegExp>>;
  /** Elements below it, in this order. */
  readonly children: readonly string[];
  readonly text: RegExp;
}

const NAMESPACE = 'http://www.landxml.org/schema/LandXML-1.2';
const ANY = /^/;
const DOUBLE = /^[-+]?\d+(\.\d+)?$/;
const BLANK = /^\s*$/;
const RULES: Readonly<Record<string, Rule>> = {
  LandXML: {
    required: { version: /^1\.2$/, date: /^\d{4}-\d\d-\d\d$/, time: /^\d\d:\d\d:\d\d$/ },
    optional: { xmlns: /^/, units: ANY, language: ANY, readOnly: /^(true|false)$/ },
    children: ['Units', 'CoordinateSystem', 'CgPoints'],
    text: BLANK,
  },
  Units: { required: {}, optional: {}, children: ['Metric'], text: BLANK },
  Metric: {
    required: {
      areaUnit: /^(hectare|squareMeter|squareMillimeter|squareCentimeter)$/,
      linearUnit: /^(millimeter|centimeter|meter|kilometer)$/,
      volumeUnit: /^(cubicMeter|liter|hectareMeter)$/,
      temperatureUnit: /^(celsius|kelvin)$/,
      pressureUnit: /^(HPA|milliBars|mmHG|millimeterHG)$/,
    },
    optional: { angularUnit: ANY, directionUnit: ANY },
    children: [],
    text: BLANK,
  },
  CoordinateSystem: {
    required: {},
    optional: { desc: ANY, name: ANY, epsgCode: /^\d+$/, horizontalDatum: ANY, verticalDatum: ANY },
    children: [],
    text: BLANK,
  },
  CgPoints: { required: {}, optional: { name: ANY, desc: ANY }, children: ['CgPoint'], text: BLANK },
  CgPoint: {
    required: {},
    optional: {
      name: ANY,
      desc: ANY,
      code: ANY,
      timeStamp: /^\d{4}-\d\d-\d\dT\d\d:\d\d:\d\d(\.\d+)?Z$/,
      northingStdError: DOUBLE,
      eastingStdError: DOUBLE,
      elevationStdError: DOUBLE,
    },
    children: [],
    // North and east, and an elevation where there is one.
    text: /^[-+]?\d+(\.\d+)? [-+]?\d+(\.\d+)?( [-+]?\d+(\.\d+)?)?$/,
  },
};

function faultsOf(element: Element): string[] {
  const { name, namespace, attributes, text, children } = element;
  const rule = RULES[name];
  if (!rule || namespace !== NAMESPACE) return [`${name} is no element of LandXML 1.2`];
  const known = { ...rule.optional, ...rule.required };
  const places = children.map((child) => rule.children.indexOf(child.name));
  return [
    ...Object.keys(rule.required)
      .filter((key) => !(key in attributes))
      .map((key) => `${name} has no ${key}`),
    ...Object.entries(attributes)
      .filter(([key, value]) => !known[key]?.test(value))
      .map(([key, value]) => `${name} has ${key}="${value}"`),
    ...(rule.text.test(text) ? [] : [`${name} holds "${text}"`]),
    ...(places.includes(-1) ? [`${name} holds an element that does not belong there`] : []),
    ...(places.every((place, index) => place >= (places[index - 1] ?? 0))
      ? []
      : [`what ${name} holds is in another order`]),
    ...children.flatMap(faultsOf),
  ];
}

describe.runIf(hasChromium)('LandXML of points', () => {
  let browser: Browser;
  let page: Page;
  beforeAll(async () => {
    browser = await launchChromium();
    page = await browser.newPage();
  });
  afterAll(() => browser.close());

  /** Throws where the text is not well-formed. */
  const parsed = (xml: string): Promise<Element> =>
    page.evaluate((source) => {
      const document = new DOMParser().parseFromString(source, 'application/xml');
      const broken = document.querySelector('parsererror');
      if (broken) throw new Error(broken.textContent);
      type Node = ReturnType<typeof plain>;
      function plain(element: globalThis.Element): {
        name: string;
        namespace: string | null;
        attributes: Record<string, string>;
        text: string;
        children: Node[];
      } {
        const own = [...element.childNodes].filter((node) => node.nodeType === node.TEXT_NODE);
        return {
          name: element.localName,
          namespace: element.namespaceURI,
          attributes: Object.fromEntries([...element.attributes].map(({ name, value }) => [name, value])),
          text: own.map((node) => node.textContent ?? '').join(''),
          children: [...element.children].map(plain),
        };
      }
      return plain(document.documentElement);
    }, xml);

  async function written(table: string): Promise<string> {
    const columns = 'name, east m, north m, height m ellipsoidal, code, time local';
    const points = `points "points.csv"\n  from        BASE\n  by          R1\n  state       as-broadcast\n  columns     ${columns}\n`;
    const at = folderWith({ 'day.trib': REPAIRED_DAY + points, 'points.csv': table });
    const out = at.path('out');
    try {
      const { status } = await tribrach(['points', at.path('day.trib'), '--out', out, '--format', 'landxml']);
      expect(status).toBe(0);
      return readFileSync(at.path('out/points.xml'), 'utf8');
    } finally {
      at.remove();
    }
  }
  const TABLE =
    'A,531000.5,4555000.25,5.5,KERB,09:00\nB,531001,4555001,,,\n---,,,,,\nC,531002.125,4555002,-5,"a, b",10:00:30.5\n';

  it('is well-formed, has the elements of the schema in their order, and north before east', async () => {
    const root = await parsed(await written(TABLE));
    expect(faultsOf(root)).toEqual([]);
    const points = root.children.find(({ name }) => name === 'CgPoints')?.children ?? [];
    expect(points.map(({ attributes }) => attributes['name'])).toEqual(['A', 'B', 'C']);
    const numbers = points.map(({ text }) => text.split(' ').map(Number));
    expect(numbers.map((three) => three.length)).toEqual([3, 2, 3]);
    for (const [north = NaN, east = NaN] of numbers) {
      expect(Math.abs(north - 4_555_001)).toBeLessThan(5);
      expect(Math.abs(east - 531_001)).toBeLessThan(5);
    }
    // The base was told 54.917 m too little.
    expect(numbers[0]?.[2]).toBeCloseTo(5.5 + 54.917, 2);
  });

  it('stays well-formed whatever points are called', async () => {
    const letters = fc.string({
      unit: fc.constantFrom(
        '<',
        '&',
        '"',
        "'",
        '-',
        '>',
        ']',
        'é',
        '𝄞',
        '\u0001',
        '\u000b',
        '\ufffe',
        '\u0085',
        ' ',
        'x',
      ),
      minLength: 1,
      maxLength: 9,
    });
    await fc.assert(
      fc.asyncProperty(fc.array(letters, { minLength: 8, maxLength: 20 }), async (names) => {
        const quoted = names.map((name) => `"n${name.replaceAll('"', '""')}."`);
        const rows = quoted.flatMap((name) => [`${name},531000,4555000,5,${name},09:00`, `${name},,,,,`]);
        const root = await parsed(await written(`${rows.join('\n')}\n`));
        expect(faultsOf(root)).toEqual([]);
        // What XML 1.0 does not allow is left out.
        const allowed = (name: string) =>
          `n${[...name].filter((letter) => !['\u0001', '\u000b', '\ufffe'].includes(letter)).join('')}.`;
        expect(root.children.at(-1)?.children.map(({ attributes }) => attributes['code'])).toEqual(
          names.map(allowed),
        );
      }),
      { numRuns: 15 },
    );
  });

  it('would be told from what is not', async () => {
    const xml = await written(TABLE);
    for (const [from, to, told] of [
      ['linearUnit="meter" ', '', 'no linearUnit'],
      ['linearUnit="meter"', 'linearUnit="metre"', 'linearUnit="metre"'],
      ['LandXML-1.2"', 'LandXML-1.0"', 'no element of LandXML 1.2'],
      ['name="A"', 'label="A"', 'label="A"'],
      ['<CgPoints>', '<CgPoints><Units/>', 'does not belong there'],
    ] as const) {
      expect(xml).toContain(from);
      expect(faultsOf(await parsed(xml.replace(from, to))).join(), to).toContain(told);
    }
    await expect(parsed(xml.replace('</CgPoints>', ''))).rejects.toThrow();
  });
});
