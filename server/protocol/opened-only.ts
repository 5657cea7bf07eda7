/** The platform for a client that does not trust its folder: what the editor has open is read, and nothing else. */
import { refuse } from '../quantities/refusal.ts';
import type { Platform } from './open-sessions.ts';

const NOT_TRUSTED = refuse('its folder is not trusted in the editor; trust the folder, and the file is read');

export const openedOnly = ({ later, now }: Platform): Platform => ({
  filesFor: () => ({ document: () => NOT_TRUSTED, bytes: () => NOT_TRUSTED }),
  sessionsBelow: () => [],
  later,
  now,
});
