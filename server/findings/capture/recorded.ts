/** Setups of which something was recorded, which are few. */
import type { SetupValues } from '../../derive/setups/setup.ts';
import { foundInEach, valuesOf } from '../../session/each.ts';
import type { Subject } from '../finding.ts';

export const capturedSetups = ({ derivation }: Pick<Subject, 'derivation'>): readonly SetupValues[] =>
  captured(valuesOf(derivation.setups));
const captured = foundInEach((setup: SetupValues) => (setup.captured ? [setup] : []));

export const loggedSetups = ({ derivation }: Pick<Subject, 'derivation'>): readonly SetupValues[] =>
  logged(valuesOf(derivation.setups));
const logged = foundInEach((setup: SetupValues) => (setup.rawLog ? [setup] : []));
