/** A recording of corrections that cannot be read, holds no base position, is damaged, or is of another day. */
import { capturedSetups } from './recorded.ts';
import type { Place } from '../../../grammar/tree.ts';
import type { CaptureValues } from '../../derive/setups/capture.ts';
import { kind, type Severity } from '../finding.ts';
import { joined } from '../saying.ts';
import { sentence } from '../words.ts';

interface Unusable {
  readonly place: Place;
  readonly severity: Severity;
  readonly headline: string;
  readonly effect: string;
  readonly action: string;
}

export const captureUnusable = kind<Unusable>({
  code: 'capture/unusable',
  find: (subject) =>
    capturedSetups(subject).flatMap(({ captured, setup }) =>
      captured ? wrongWith(captured, setup.name) : [],
    ),
  tell: ({ severity, headline, effect, action }) => ({ severity, headline, effect, action }),
});

function wrongWith({ file, refused, capture, station, otherDay }: CaptureValues, name: string): Unusable[] {
  const { place, text } = file;
  if (refused !== null || !capture)
    return [
      {
        ...{ place, severity: 'information' },
        headline: `Recording not readable: ${text}.`,
        effect: `${sentence(refused ?? 'it is empty')}. What ${name} broadcast is not checked.`,
        action: 'Put the recording where the notes name it.',
      },
    ];
  const found: Unusable[] = [];
  if (!station)
    found.push({
      ...{ place, severity: 'information' },
      headline: `No base position in ${text} (1005 or 1006).`,
      effect: joined(
        capture.frames === 0 ? (capture.problems[0]?.sentence ?? '') : '',
        `It does not show what ${name} broadcast.`,
      ),
      action: 'Record for longer than the interval of the position.',
    });
  if (otherDay)
    found.push({
      ...{ place, severity: 'warning' },
      headline: `Recording is of another day: ${text}.`,
      effect: 'Its weekday is not that of the session.',
      action: 'Name the recording of this day.',
    });
  const broken = capture.damagedFrames + capture.malformed;
  if (broken > 0 && capture.frames > 0)
    found.push({
      ...{ place, severity: 'information' },
      headline: `${broken} of ${capture.frames + capture.damagedFrames} messages damaged in ${text}.`,
      effect: 'They are not used. Recorded at a rover, this shows a weak radio link.',
      action: '',
    });
  return found;
}
