/** Everything that is said of a text, as plain data, without the objects that say it. */
import type { Document } from '../grammar/document.ts';
import { listValues } from '../server/derive/listing.ts';
import { inlaysIn } from '../server/features/inlays.ts';
import { noticesOf } from '../server/features/notices.ts';
import { inspect } from '../server/inspect.ts';
import { isHole } from '../server/quantities/value.ts';
import type { Files } from '../server/session/files.ts';
import { whereIs } from '../server/session/where.ts';

/** @param files what was said of the document before is remembered with them */
export function said(document: Document, files: Files) {
  const inspection = inspect(document, files);
  const { session, derivation } = inspection;
  return {
    values: listValues(derivation).map(({ id, value, place }) => [
      id,
      isHole(value) ? value.hole : [value.value, value.sigma],
      whereIs(session, place),
    ]),
    notices: noticesOf(inspection),
    inlays: inlaysIn(inspection, 0, document.text.length),
  };
}
