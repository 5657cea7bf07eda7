/** Everything that is fuzzed, in the order of the rooms. */
import { COMMANDS } from './commands.ts';
import { EVIDENCE } from './evidence.ts';
import { GEODESY } from './geodesy.ts';
import { GROWTH } from './growth.ts';
import { INSPECTION } from './inspection.ts';
import { LANGUAGE } from './language.ts';
import { MARKS } from './marks.ts';
import { PROTOCOL } from './protocol.ts';
import type { Target } from './target.ts';
import { WRITTEN } from './written.ts';

export const TARGETS: readonly Target[] = [
  ...LANGUAGE,
  ...GEODESY,
  ...EVIDENCE,
  ...MARKS,
  ...INSPECTION,
  ...COMMANDS,
  ...WRITTEN,
  ...PROTOCOL,
  ...GROWTH,
];
