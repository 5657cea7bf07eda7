/** The setup that a place in the text is about: its own entry, a check or point of it, or the mark under it. */
import type { Inspection } from '../inspect.ts';
import { cursorAt } from './cursor.ts';

export function setupAt({ session, derivation }: Inspection, offset: number): string | null {
  const bound = cursorAt(session, offset)?.bound;
  if (bound?.kind === 'setup') return bound.name;
  if (bound?.kind === 'check')
    return derivation.checks.find(({ check }) => check === bound)?.setup?.setup.name ?? null;
  if (bound?.kind === 'mark')
    return [...session.setups.values()].find(({ on }) => on?.name === bound.name)?.name ?? null;
  return null;
}
