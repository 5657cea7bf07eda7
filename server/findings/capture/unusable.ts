/** A recording of corrections that cannot be read, holds no base position, is damaged, or is of another day. */
import { capturedSetups } from './recorded.ts';
import type { Place } from '../../../grammar/tree.ts';
import type { CaptureValues } from '../../derive/setups/capture.ts';
import { kind, type Severity } from '../finding.ts';

interface Unusable {
  readonly place: Place;
  readonly severity: Severity;
  readonly message: string;
}

export const captureUnusable = kind<Unusable>({
  code: 'capture/unusable',
  find: (subject) =>
    capturedSetups(subject).flatMap(({ captured, setup }) =>
      captured ? wrongWith(captured, setup.name) : [],
    ),
  tell: ({ severity, message }) => ({ severity, message }),
});

function wrongWith({ file, refused, capture, station, otherDay }: CaptureValues, name: string): Unusable[] {
  const { place, text } = file;
  if (refused !== null || !capture)
    return [
      {
        ...{ place, severity: 'information' },
        message: `The recording ${text} cannot be read: ${refused ?? 'it is empty'}. What ${name} really broadcast is not compared with the notes.`,
      },
    ];
  const found: Unusable[] = [];
  if (!station)
    found.push({
      ...{ place, severity: 'information' },
      message: `${capture.problems[0]?.sentence && capture.frames === 0 ? capture.problems[0].sentence : `${text} holds no station position (1005 or 1006).`} What ${name} really broadcast is not known from it. Record for longer than the interval of the position.`,
    });
  if (otherDay)
    found.push({
      ...{ place, severity: 'warning' },
      message: `By its weekday ${text} was not recorded on the day of these notes. Look whether it is the right file.`,
    });
  const broken = capture.damagedFrames + capture.malformed;
  if (broken > 0 && capture.frames > 0)
    found.push({
      ...{ place, severity: 'information' },
      message: `${broken} of ${capture.frames + capture.damagedFrames} messages in ${text} are damaged; what they said is not used. Recorded at the rover this tells of a weak link.`,
    });
  return found;
}
