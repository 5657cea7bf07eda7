/** Settings of a radio that there are not, that do not go together, or that are unusual. */
import { partnerOf } from '../../derive/link/link.ts';
import { oddSettings, radioOf, type OddSetting } from '../../derive/link/ends.ts';
import type { Radio } from '../../session/entries.ts';
import { kind, type Subject } from '../finding.ts';

export const radioSettings = kind({
  code: 'radio/settings',
  find: ({ session }) =>
    [...session.radios.values()].flatMap((radio) =>
      oddSettings(radio).map((setting) => ({ ...setting, radio })),
    ),
  tell: ({ odd, sentence, radio }, subject) => {
    const check = odd === 'unusual' ? fixedOver(radio, subject) : null;
    if (check !== null)
      return {
        severity: 'information',
        message: `${sentence} ${check} was fixed over it all the same, so this radio may be one that carries more, or the note of its channel or rate is wrong.`,
      };
    return { severity: 'warning', message: `${sentence} ${advice(odd, radio)}` };
  },
});

function advice(odd: OddSetting['odd'], { name }: Radio): string {
  if (odd === 'none such')
    return `What the stream asks of radio ${name} cannot be told from such a note; look the setting up in the radio.`;
  if (odd === 'contradicted') return `One of them is noted wrongly; look them up in radio ${name}.`;
  return `Look both up in radio ${name}: where one is noted wrongly, so is what the stream asks of it.`;
}

/** A check that shows that this radio's link carried the corrections. */
function fixedOver(radio: Radio, { derivation: { link, checks } }: Subject): string | null {
  const base = link.ends.rovers.includes(radio) ? partnerOf(radio, link.ends) : radio;
  const found = checks.find(
    ({ quality, setup }) =>
      quality?.solution?.name === 'fixed' && setup && radioOf(link.ends, setup.setup.name) === base,
  );
  return found?.check.name ?? null;
}
