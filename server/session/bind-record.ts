/** Reads what belongs to the record: `hazard`, `note`, `correction` and `review`. */
import type { Maybe } from '../quantities/value.ts';
import type { Source } from './bind.ts';
import type { Named } from './coordinates.ts';
import type { Correction, Hazard, Note, Review } from './entries.ts';
import { takeDate, takeMoment, type Moment } from './moments.ts';
import { takeNamed, takeQuoted } from './phrases.ts';

export function bindHazard({ header, details, base }: Source): Hazard {
  const text = takeQuoted(header)?.text ?? '';
  header.finish();
  const controls = details.all('control', takeQuoted).filter((control) => control !== null);
  return { ...base, kind: 'hazard', text, controls };
}

export function bindNote({ header, base }: Source): Note {
  const text = takeQuoted(header)?.text ?? '';
  header.finish();
  return { ...base, kind: 'note', text };
}

export function bindCorrection({ header, details, base }: Source): Correction {
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
    ...base,
    kind: 'correction',
    text,
    on,
    at,
    by: details.one('by', takeNamed),
    because: details.one('because', takeQuoted),
  };
}

export function bindReview({ header, base }: Source): Review {
  const by = takeQuoted(header)?.text ?? '';
  const next = header.peek();
  const date = next && next.kind !== 'word' ? takeDate(header, 'date of the review') : null;
  const seal = header.word('seal') ? takeNamed(header) : null;
  header.finish(['seal']);
  return { ...base, kind: 'review', by, date, seal };
}
