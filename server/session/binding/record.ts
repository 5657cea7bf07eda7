/** Reads what belongs to the record: `hazard`, `note`, `correction` and `review`. */
import type { Maybe } from '../../quantities/value.ts';
import type { Source } from './bind.ts';
import type { Named } from '../coordinates.ts';
import type { Correction, Hazard, Note, Review } from '../entries.ts';
import { takeDate, takeMoment, type Moment } from '../moments.ts';
import { takeNamed, takeQuoted } from './phrases.ts';

export function bindHazard({ header, details, entry, place, remarks }: Source): Hazard {
  const text = takeQuoted(header)?.text ?? '';
  header.finish();
  const controls = details.all('control', takeQuoted).filter((control) => control !== null);
  return { entry, place, remarks, kind: 'hazard', text, controls };
}

export function bindNote({ header, entry, place, remarks }: Source): Note {
  const text = takeQuoted(header)?.text ?? '';
  header.finish();
  return { entry, place, remarks, kind: 'note', text };
}

export function bindCorrection({ header, details, entry, place, remarks }: Source): Correction {
  const text = takeQuoted(header)?.text ?? '';
  let on: Named | null = null;
  let at: Maybe<Moment> | null = null;
  for (;;) {
    if (header.word('on')) on = takeNamed(header);
    else if (header.word('at')) at = takeMoment(header, 'time of the correction');
    else if (!header.comma()) break;
  }
  header.finish(['on', 'at']);
  return {
    entry,
    place,
    remarks,
    kind: 'correction',
    text,
    on,
    at,
    by: details.one('by', takeNamed),
    because: details.one('because', takeQuoted),
  };
}

export function bindReview({ header, entry, place, remarks }: Source): Review {
  const by = takeQuoted(header)?.text ?? '';
  const next = header.peek();
  const date = next && next.kind !== 'word' ? takeDate(header, 'date of the review') : null;
  const seal = header.word('seal') ? takeNamed(header) : null;
  header.finish(['seal']);
  return { entry, place, remarks, kind: 'review', by, date, seal };
}
