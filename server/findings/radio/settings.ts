/** Settings of a radio that there are not, that do not go together, or that are unusual. */
import { partnerOf } from '../../derive/link/link.ts';
import { oddSettings, radioOf, type OddSetting } from '../../derive/link/ends.ts';
import type { Radio } from '../../session/entries.ts';
import { kind, type Subject } from '../finding.ts';
import { joined, sayingOf } from '../saying.ts';

export const radioSettings = kind({
  code: 'radio/settings',
  find: ({ session }) =>
    [...session.radios.values()].flatMap((radio) =>
      oddSettings(radio).map((setting) => ({ ...setting, radio })),
    ),
  tell: ({ odd, sentence, radio }, subject) => {
    const check = odd === 'unusual' ? fixedOver(radio, subject) : null;
    const { headline, effect } = sayingOf({ message: sentence });
    if (check !== null)
      return {
        severity: 'information',
        headline,
        effect: joined(effect, `Yet ${check} was fixed over it.`),
        action: `Look the settings up in radio ${radio.name}.`,
      };
    return { severity: 'warning', headline, effect, action: advice(odd, radio) };
  },
});

function advice(odd: OddSetting['odd'], { name }: Radio): string {
  if (odd === 'none such') return `Look the setting up in radio ${name}; until then its load is not known.`;
  if (odd === 'contradicted') return `One of them is noted wrongly: look them up in radio ${name}.`;
  return `Look both up in radio ${name}: the load is computed from them.`;
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
