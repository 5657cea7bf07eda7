/** A diagnosis in sentences: what would explain the checks, what cannot be told apart, and what to look at. */
import type { Diagnosis, Group } from '../../slips/diagnosis.ts';
import { partedBy, type Parted } from '../../slips/parted-checks.ts';
import type { Subject, Told } from '../finding.ts';
import { namePlace } from './residuals.ts';
import { clockTime, oneOf } from '../words.ts';

/** More groups, and more in a group, would hide what matters. */
const GROUPS = 2;
const MEMBERS = 4;

export function toldDiagnosis(
  { setup, groups, answer, checks }: Diagnosis,
  subject: Subject,
): NonNullable<Told['rests']> {
  const place = namePlace(setup.setup);
  if (answer === 'none') {
    const parted = partedBy(checks);
    return [{ place, message: parted ? toldParted(parted, subject) : toldNone(setup.setup.name) }];
  }
  return groups
    .slice(0, GROUPS)
    .flatMap((group, index) => sentencesOf(group, index > 0))
    .map((message) => ({ place, message }));
}

const toldNone = (name: string) =>
  `No known slip explains the checks of ${name} together. Look for a moved base or mark, a bad occupation, or something that was not noted.`;

/** What agreed once was keyed rightly, so that something happened since; a single check can be wrong by itself. */
function toldParted({ before, after }: Parted, subject: Subject): string {
  const base = after.setup?.setup.name ?? 'the base';
  const mark = after.mark?.mark.name ?? 'its mark';
  const [earlier, later] = [before, after].map(({ check, instant }) => ({
    name: check.name,
    time: clockTime(instant, subject) ?? 'its time',
  }));
  const others = [
    ...(after.mark === before.mark ? [] : [`${mark} is not where its coordinates say`]),
    `${later?.name ?? ''} was a bad occupation`,
  ];
  return `${earlier?.name ?? ''} passes at ${earlier?.time ?? ''} and ${later?.name ?? ''} fails at ${later?.time ?? ''}: ${base} may have moved between them, or ${oneOf(others)}. Look at the tripod and its plummet, and occupy ${mark} again: if the base moved, the same difference shows.`;
}

const ELSE =
  'Something else that nobody has listed explains it nearly as well: an antenna height of another day, a number misread by any amount, a wrong height in the register. Confirm it before anything is shifted.';

const sentencesOf = (group: Group, another: boolean): string[] => [
  ...explained(group, another),
  ...(group.open && !another ? [ELSE] : []),
];

function explained({ explanations, looks }: Group, another: boolean): string[] {
  const [first, ...others] = explanations.slice(0, MEMBERS);
  if (!first) return [];
  const start = another ? 'Less likely' : 'Possible cause';
  const look = `Look at ${allLooks(looks.slice(0, MEMBERS))}.`;
  if (others.length === 0) return [`${start}: ${first.says}. ${look}`];
  return [
    `${start}: ${first.says}.`,
    ...others.map(({ says }) => `Or, not to be told apart by these checks: ${says}.`),
    `To tell them apart, ${look[0]?.toLowerCase() ?? ''}${look.slice(1)}`,
  ];
}

const allLooks = (looks: readonly string[]) =>
  looks.length < 2 ? (looks[0] ?? '') : `${looks.slice(0, -1).join('; ')}; and ${looks.at(-1) ?? ''}`;
