/** Every kind of finding, in the order in which a reader would look for them. */
import type { AnyFindingKind } from './finding.ts';
import { unitMissing } from './unit-missing.ts';

export const CATALOGUE: readonly AnyFindingKind[] = [unitMissing];
