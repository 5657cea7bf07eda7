/** A check on the mark that the base itself stands on, which proves nothing about what was keyed. */
import type { CheckValues } from '../../derive/checks/check.ts';
import { foundInEach } from '../../session/each.ts';
import { kind } from '../finding.ts';

export const checkBaseMark = kind({
  code: 'check/base-mark',
  find: ({ derivation }) => onBaseMark(derivation.checks),
  tell: ({ check, setup }) => ({
    severity: 'warning',
    headline: `${check.check.name} proves nothing: ${check.mark?.mark.name ?? 'its mark'} is the mark of ${setup.setup.name}.`,
    effect: 'Wrong coordinates of that mark cancel at both ends.',
    action: 'Check another known mark.',
    causes: [`base-mark/${setup.setup.name}`],
  }),
});

const onBaseMark = foundInEach((check: CheckValues) =>
  check.mark && check.setup && check.mark === check.setup.mark
    ? [{ check, setup: check.setup, place: check.check.on?.place ?? check.check.place }]
    : [],
);
