/** A check on the mark that the base itself stands on, which proves nothing about what was keyed. */
import type { CheckValues } from '../../derive/checks/check.ts';
import { foundInEach } from '../../session/each.ts';
import { kind } from '../finding.ts';

export const checkBaseMark = kind({
  code: 'check/base-mark',
  find: ({ derivation }) => onBaseMark(derivation.checks),
  tell: ({ check, setup }) => ({
    severity: 'warning',
    message: `${check.check.name} was made on ${check.mark?.mark.name ?? 'the mark'}, which ${setup.setup.name} stands on: wrong coordinates of that mark show at both ends alike and cancel. Make the check on another known mark.`,
    causes: [`base-mark/${setup.setup.name}`],
  }),
});

const onBaseMark = foundInEach((check: CheckValues) =>
  check.mark && check.setup && check.mark === check.setup.mark
    ? [{ check, setup: check.setup, place: check.check.on?.place ?? check.check.place }]
    : [],
);
