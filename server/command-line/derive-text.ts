/** Derived values as a table for people: by mark, setup and check, with the digits that their uncertainty earns. */
import picocolors from 'picocolors';
import { isBelow, listCheck, listLinks, listMark, listSetup, type Listed } from '../derive/listing.ts';
import {
  decimalsFor,
  decimalsOf,
  showAngle,
  showLength,
  showNumber,
  showSigma,
  showTurn,
} from '../quantities/show.ts';
import { isHole, type Value } from '../quantities/value.ts';
import { onGround } from '../record/card/on-ground.ts';
import type { Io } from './io.ts';
import { partOf, shownPath, type Inspected } from './sessions.ts';
import { harmless, wrapped } from './terminal-text.ts';

/** @param only the id of a value, or of what stands above several; all where it is empty */
export function valuesText(inspected: readonly Inspected[], io: Io, only: string): string {
  return inspected
    .map((session) => partOf(session.path, io, () => sessionText(session, io, only)))
    .join('\n');
}

function sessionText({ path, derivation }: Inspected, io: Io, only: string): string {
  const { bold, dim } = picocolors.createColors(io.colours);
  const { marks, setups, checks, link } = derivation;
  const groups = [
    ...[...marks.values()].map((values) => ({ listed: listMark(values), remark: '' })),
    ...[...setups.values()].map((values) => ({ listed: listSetup(values), remark: '' })),
    ...checks.map((values) => ({
      listed: listCheck(values),
      remark: values.verdict === 'undecided' ? '' : values.verdict,
    })),
    ...listLinks(link).map((listed) => ({ listed, remark: '' })),
  ];
  const wanted = groups.filter(({ listed }) => listed.some(({ id }) => isBelow(id, only)));
  const tables = wanted.map(({ listed, remark }) => {
    const { head, rows, holes } = tableOf(listed, only);
    const title = [bold(harmless(head)), ...(remark === '' ? [] : [remark])].join('  ');
    return [title, ...rows, ...holes.map((line) => dim(wrapped(line, io.width, '  ')))].join('\n');
  });
  return `${[bold(harmless(shownPath(path))), ...tables].join('\n\n')}\n`;
}

interface Table {
  /** What the ids of the group have in common: `mark/PM-14`. */
  readonly head: string;
  readonly rows: readonly string[];
  readonly holes: readonly string[];
}

function tableOf(listed: readonly Listed[], only: string): Table {
  const head = (listed[0]?.id ?? '').split('/').slice(0, 2).join('/');
  const missing = new Map<string, string[]>();
  const rows: string[][] = [];
  const at = valueOf(listed, 'latitude');
  for (const { id, value } of listed.filter((one) => isBelow(one.id, only))) {
    const label = id.slice(head.length + 1);
    if (isHole(value)) missing.set(value.hole, [...(missing.get(value.hole) ?? []), label]);
    else rows.push([label, numberOf(value, label), spreadOf(value, label, at)]);
  }
  return {
    head,
    rows: rows.map(([label = '', number = '', spread = '']) =>
      `  ${label.padEnd(LABEL)} ${number.padStart(NUMBER)}  ${spread}`.trimEnd(),
    ),
    holes: [...missing].map(([reason, labels]) =>
      rows.length === 0 ? `not known: ${reason}` : `${labels.join(', ')}: not known, ${reason}`,
    ),
  };
}

/** The longest label is `tell/ellipsoidal-height`, the longest number a longitude. */
const LABEL = 24;
const NUMBER = 20;

function numberOf(value: Value, label: string): string {
  if (label.endsWith('latitude')) return showAngle(value.value, 'N');
  if (label.endsWith('longitude')) return showAngle(value.value, 'E');
  if (label.endsWith('convergence')) return showTurn(value.value);
  const number = showNumber(value.value, decimalsOf(value));
  return value.unit === '' ? number : value.unit === '°' ? `${number}°` : `${number} ${value.unit}`;
}

/** An angle's uncertainty as it lies on the ground. */
function spreadOf(value: Value, label: string, at: Value | null): string {
  const { sigma, unit } = value;
  if (sigma === null || sigma === 0) return '';
  if (unit === 'm') return `± ${showSigma(sigma, unit)}`;
  if (unit !== '°' || !at) return `± ${showNumber(sigma, decimalsFor(unit, sigma))}${unit}`;
  return `± ${showLength(onGround(sigma, at.value, label.endsWith('longitude') ? 'parallel' : 'meridian'))}`;
}

function valueOf(listed: readonly Listed[], label: string): Value | null {
  const found = listed.find(({ id }) => id.endsWith(`/${label}`))?.value;
  return found && !isHole(found) ? found : null;
}
