/** Settings of a radio that there are not, or that do not go together. */
import { impossibleSettings } from '../derive/link-ends.ts';
import { kind } from './finding.ts';

export const radioSettings = kind({
  code: 'radio/settings',
  find: ({ session }) =>
    [...session.radios.values()].flatMap((radio) =>
      impossibleSettings(radio).map((impossible) => ({ ...impossible, radio })),
    ),
  tell: ({ sentence, radio }) => ({
    severity: 'warning',
    message: `${sentence} What the stream asks of radio ${radio.name} cannot be told from such a note; look the setting up in the radio.`,
  }),
});
