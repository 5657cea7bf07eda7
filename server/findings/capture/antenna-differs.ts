/** A base that broadcast another antenna type than the one whose calibration the notes name. */
import { capturedSetups } from './recorded.ts';
import type { Place } from '../../../grammar/tree.ts';
import type { SetupValues } from '../../derive/setups/setup.ts';
import { antennaType } from '../../evidence/antex.ts';
import { kind } from '../finding.ts';
import { short } from '../words.ts';

interface OtherAntenna {
  readonly place: Place;
  readonly setup: SetupValues;
  /** As broadcast, without blanks at its end; empty where none was. */
  readonly broadcast: string;
  readonly number: number;
  readonly noted: { readonly type: string; readonly place: Place } | null;
}

export const captureAntennaDiffers = kind<OtherAntenna>({
  code: 'capture/antenna-differs',
  find: (subject) =>
    capturedSetups(subject).flatMap((setup): OtherAntenna[] => {
      const { captured, antenna } = setup;
      const type = antenna?.calibration?.type ?? null;
      return (captured?.station?.equipment ?? []).flatMap(({ value }): OtherAntenna[] => {
        const broadcast = value.antennaDescriptor;
        const silent = broadcast.trim() === '';
        if (!captured || (!silent && (!type || antennaType(broadcast) === antennaType(type.text)))) return [];
        const noted = type ? { type: type.text.trim(), place: type.place } : null;
        return [{ place: captured.file.place, setup, broadcast, number: value.number, noted }];
      });
    }),
  tell: ({ setup, broadcast, number, noted }) => {
    const { name } = setup.setup;
    const file = setup.captured?.file.text ?? '';
    const rests = noted ? [{ message: 'The type in the notes.', place: noted.place }] : [];
    if (broadcast.trim() === '')
      return {
        severity: 'warning',
        headline: `${name} broadcast no antenna type (message ${number}).`,
        effect: `${file} shows it. Rovers cannot apply the calibration of the base antenna, so heights may be off.`,
        action: 'Key the antenna type in the receiver and note the time.',
        rests,
      };
    return {
      severity: 'warning',
      headline: `${name} broadcast the antenna ${short(broadcast)}, not ${short(noted?.type ?? '')}.`,
      effect: `${file}, message ${number}. Heights are off by the difference of the phase centres.`,
      action: 'Look up which antenna it was.',
      rests,
    };
  },
});
