/** The name of an antenna, rover, setup, surface or ground grid that nothing in the session answers to. */
import { kind } from '../finding.ts';
import { elsewhere, nearNameFixes, unknownNames, type UnknownName } from './remarks.ts';
import { unreadEntry } from '../unread.ts';
import { oneOf, short } from '../words.ts';
import type { NamedKind } from '../../session/remark.ts';

export const syntaxUnknownName = kind<UnknownName>({
  code: 'syntax/unknown-name',
  find: (subject) => unknownNames(subject, (sort) => sort !== 'mark'),
  tell: (unknown) => {
    const { kind: what, name, near } = unknown.remark;
    return {
      // Without its rover a check still has its residual; without antenna or setup there is nothing to compute with.
      severity: what === 'rover' ? 'warning' : 'error',
      headline: `Unknown ${what === 'ground' ? 'ground grid' : what} ${short(name)}.`,
      effect: missing[what] ?? '',
      action: near.length > 0 ? `Did you mean ${oneOf(near)}?` : 'Add it, or use the file that has it.',
      rests: elsewhere(unknown),
      follows: unreadEntry(what, name),
    };
  },
  mend: nearNameFixes,
});

const missing: Partial<Readonly<Record<NamedKind, string>>> = {
  antenna: 'Its tape points and phase centre are not known.',
  rover: 'Its pole and settings are not known.',
  setup: 'There is no base to compute with.',
  surface: 'The height is above nothing that is known.',
  ground: 'The system of the coordinates is not known.',
};
