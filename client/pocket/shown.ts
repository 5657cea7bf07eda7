/** The findings of a session as elements of the pocket page; text only ever becomes text. */
import { SEVERITIES, type Edit, type Finding, type Severity } from '../../server/findings/finding.ts';
import { belowHeadline } from '../../server/findings/saying.ts';
import type { Inspection } from '../../server/inspect.ts';
import { offsetsOf, whereIs } from '../../server/session/where.ts';

/** A sign of its own for each severity, so that none is told by colour alone. */
const SIGNS: Readonly<Record<Severity, string>> = { error: '■', warning: '▲', information: '●', hint: '○' };

export interface FindingActions {
  readonly goTo: (start: number, end: number) => void;
  readonly apply: (edits: readonly Edit[]) => void;
}

export function findingList(inspection: Inspection, actions: FindingActions): HTMLElement[] {
  // On a small screen the worst comes first; the sort keeps the order of the text among equals.
  const findings = [...inspection.findings].sort(
    (one, other) => SEVERITIES.indexOf(one.severity) - SEVERITIES.indexOf(other.severity),
  );
  if (findings.length === 0) return [element('p', 'Nothing is wrong as far as can be seen.')];
  const list = element('ol');
  list.append(...findings.map((finding) => findingItem(finding, inspection, actions)));
  return [list];
}

function findingItem(
  finding: Finding,
  { session }: Inspection,
  { goTo, apply }: FindingActions,
): HTMLElement {
  const item = element('li');
  const { line } = whereIs(session, finding.place);
  const offsets = offsetsOf(session, finding.place);
  const jump = button(`line ${line}`, () => offsets && goTo(offsets.start, offsets.end));
  const head = element('p');
  head.append(
    element(
      'span',
      `${SIGNS[finding.severity]} ${finding.severity} ${finding.code} `,
      `code ${finding.severity}`,
    ),
    jump,
  );
  const below = belowHeadline(finding);
  item.append(head, element('p', finding.headline, 'headline'));
  if (below !== '') item.append(element('p', below));
  if (finding.related.length > 0) {
    const related = element('ul');
    for (const { headline, place } of finding.related)
      related.append(element('li', `line ${whereIs(session, place).line}: ${headline}`));
    item.append(related);
  }
  const bar = element('div', '', 'bar');
  for (const fix of finding.fixes) bar.append(button(fix.title, () => apply(fix.edits)));
  if (finding.fixes.length > 0) item.append(bar);
  return item;
}

function button(text: string, press: () => void): HTMLButtonElement {
  const made = document.createElement('button');
  made.type = 'button';
  made.textContent = text;
  made.addEventListener('click', press);
  return made;
}

function element(tag: string, text = '', className = ''): HTMLElement {
  const made = document.createElement(tag);
  made.textContent = text;
  if (className !== '') made.className = className;
  return made;
}
