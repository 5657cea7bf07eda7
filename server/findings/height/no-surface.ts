/** A height that does not say which surface it stands on. */
import type { Place } from '../../../grammar/tree.ts';
import { showLength } from '../../quantities/show.ts';
import { isHole } from '../../quantities/value.ts';
import { kind, readingFixes, type Subject } from '../finding.ts';
import { remarksAbout } from '../syntax/remarks.ts';
import { short } from '../words.ts';

export const heightNoSurface = kind({
  code: 'height/no-surface',
  find: (subject) => remarksAbout(subject, 'no-surface'),
  tell: ({ place, typed }, subject) => ({
    severity: 'error',
    headline: `Height ${short(typed)} without its surface.`,
    effect: `Not used: the surfaces are ${separationAt(place, subject)}.`,
    action: 'Write orthometric, ellipsoidal, or above and a surface.',
  }),
  mend: ({ place, readings }) => readingFixes(place, readings),
});

/** The separation of the mark that the height's entry is about. */
function separationAt({ entry }: Place, { derivation }: Subject): string {
  const marks = [
    ...[...derivation.marks.values()].filter(({ mark }) => mark.entry === entry),
    ...[...derivation.setups.values()].filter(({ setup }) => setup.entry === entry).map(({ mark }) => mark),
    ...derivation.checks.filter(({ check }) => check.entry === entry).map(({ mark }) => mark),
  ];
  const [separation] = marks
    .map((mark) => mark?.separation)
    .filter((value) => value !== undefined && !isHole(value));
  if (!separation || isHole(separation)) return 'tens of metres apart in most places';
  return `${showLength(Math.abs(separation.value))} apart here`;
}
