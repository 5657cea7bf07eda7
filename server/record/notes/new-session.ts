/** A first session: the questions that a careful surveyor answers, in the order in which the day asks them. */
import { dayNumberOfIso } from '../../evidence/civil-time.ts';
import { quoted } from './quoted.ts';

/**
 * @param date of the day, `YYYY-MM-DD`; null leaves it open like everything else
 * @param name of the job; null leaves it open, too
 */
export function newSession(date: string | null, name: string | null = null): string {
  return `# A ? is a question. Put what was looked up, read or seen in its place; take out what the day does not have.

# In the office: which job, which systems, how good must it be?
job ${quoted(name?.trim() || '?')}
  date        ${date ?? '?'}
  clock       ?                 # UTC+01:00: the clock that times are noted from
  observer    "?"
  grid        ?                 # EPSG:3763
  vertical    "?"               # the levelling datum of the heights
  tolerance   ? horizontal, ? vertical

# In the office: which mark for the base, and which second one to prove it?
mark BASE-MARK "?"
  position    ? m E, ? m N
  height      ? m orthometric
  separation  ? m               # the geoid above the ellipsoid, as the register has it
  uncertainty ? horizontal, ? vertical
  source      "?" ?             # where it was published, and when it was looked up
  found       ?                 # intact, damaged, disturbed, not-found
mark CHECK-MARK "?"
  position    ? m E, ? m N
  height      ? m orthometric
  separation  ? m
  uncertainty ? horizontal, ? vertical
  source      "?" ?
  found       ?

# In the office: which gear, and where are its points?
antenna ANTENNA "?"
  phase-centre ? above arp
rover ROVER "?"
  pole        ? to arp
  site-calibration ?            # none, or the name of the file

# On site, before the tripod is set up: who or what could be hurt here, and what is done about it?
hazard "?"
  control     "?"

# On the mark: tape twice, and say what the tape was held to.
setup BASE on BASE-MARK with ANTENNA at ?
  measured    ? to foot, ? off centre, at ?
  measured    ? to foot, ? off centre, at ?, by "?"
  extension   ?                 # take the line out where there is none
  autonomous  ?                 # where the receiver found itself, before anything was keyed
  keyed       position ?
  keyed       antenna-height ? to arp
  keyed       antenna-type ?

# Before the work, after anything that may have moved the base, and at the end:
check OPEN on CHECK-MARK at ? by ROVER
  observed    ? m E, ? m N, height ? m orthometric
  quality     ?
`;
}

export const isDay = (typed: string) => dayNumberOfIso(typed) !== undefined;
