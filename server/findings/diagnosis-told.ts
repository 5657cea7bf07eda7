/** A diagnosis in sentences: what would explain the checks, what cannot be told apart, and what to look at. */
import type { Diagnosis, Group } from '../slips/diagnosis.ts';
import type { Told } from './finding.ts';
import { namePlace } from './residuals.ts';

/** More groups, and more in a group, would hide what matters. */
const GROUPS = 2;
const MEMBERS = 4;

export function toldDiagnosis({ setup, groups, answer }: Diagnosis): NonNullable<Told['rests']> {
  const place = namePlace(setup.setup);
  if (answer === 'none')
    return [
      {
        place,
        message: `None of the known slips would explain the checks of ${setup.setup.name} together. Think of a base or a mark that was moved, of a bad occupation, and of what was not written down.`,
      },
    ];
  return groups
    .slice(0, GROUPS)
    .flatMap((group, index) => sentencesOf(group, index > 0))
    .map((message) => ({ place, message }));
}

function sentencesOf({ explanations, looks }: Group, another: boolean): string[] {
  const [first, ...others] = explanations.slice(0, MEMBERS);
  if (!first) return [];
  const start = another ? 'Less likely, it' : 'It';
  const look = `Look at ${allLooks(looks.slice(0, MEMBERS))}.`;
  if (others.length === 0) return [`${start} would be explained if ${first.says}. ${look}`];
  return [
    `${start} would be explained if ${first.says}.`,
    ...others.map(({ says }) => `By these observations that cannot be told apart from this: ${says}.`),
    `What would tell them apart: ${look[0]?.toLowerCase() ?? ''}${look.slice(1)}`,
  ];
}

const allLooks = (looks: readonly string[]) =>
  looks.length < 2 ? (looks[0] ?? '') : `${looks.slice(0, -1).join('; ')}; and ${looks.at(-1) ?? ''}`;
