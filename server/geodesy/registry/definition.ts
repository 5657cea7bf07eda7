/** A local grid by its own definition: a PROJ string or well-known text, refused where it leaves the earth unsaid. */
import { refuse, type Refusal } from '../../quantities/refusal.ts';
import type { CoordinateSystem } from '../system.ts';
import { systemFromProjString } from './proj-string.ts';
import { systemFromWkt } from './wkt-system.ts';

/**
 * The system that a definition describes, in its own datum. What a definition says about shifts to another datum
 * (`+towgs84`, `+nadgrids`, `TOWGS84`) is no part of the system and is left aside.
 */
export function systemFrom(definition: string): CoordinateSystem | Refusal {
  const text = definition.trim();
  if (text === '') return refuse('The definition is empty.');
  if (/^\+?(?:proj|init)=/.test(text) || text.startsWith('+')) return systemFromProjString(text);
  if (/^[A-Za-z]\w*\s*[[(]/.test(text)) return systemFromWkt(text);
  return refuse(
    'The definition is neither a PROJ string (+proj=…) nor well-known text (PROJCS[…], PROJCRS[…]).',
  );
}
