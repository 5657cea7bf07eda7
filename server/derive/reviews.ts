/** Whether what was reviewed is still what stands here. */
import type { Review } from '../session/entries.ts';
import type { Files } from '../session/files.ts';
import { readSeal, sealOf, SEALED_PARTS, type SealedPart } from '../session/seal.ts';
import type { Session } from '../session/session.ts';

export interface ReviewValues {
  readonly review: Review;
  readonly standing:
    | { readonly is: 'unsealed' }
    | { readonly is: 'fresh' }
    | { readonly is: 'stale'; readonly changed: readonly SealedPart[] }
    /** The seal is none, or what it covers can no longer be read. */
    | { readonly is: 'unverifiable'; readonly because: string };
}

export function reviewValues(session: Session, files: Files): ReviewValues[] {
  const now = session.reviews.some(({ seal }) => seal !== null) ? sealOf(session, files) : null;
  return session.reviews.map((review) => ({ review, standing: standingOf(review, now) }));
}

function standingOf(review: Review, now: ReturnType<typeof sealOf> | null): ReviewValues['standing'] {
  if (!review.seal || !now) return { is: 'unsealed' };
  const then = readSeal(review.seal.name);
  if (!then)
    return {
      is: 'unverifiable',
      because: 'what stands behind `seal` is no seal; `tribrach seal` prints one',
    };
  if ('unsealed' in now) return { is: 'unverifiable', because: now.unsealed.join('; ') };
  if (then.whole === now.whole) return { is: 'fresh' };
  return { is: 'stale', changed: SEALED_PARTS.filter((part) => then.parts[part] !== now.parts[part]) };
}
