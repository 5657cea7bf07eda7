/** What a finding's code means, as a page of its own: what it says, why it hurts, what to do. */
import { EXPLANATIONS } from '../../findings/explanations.ts';

/** Markdown; null where no finding has that code. */
export function explainedPage(code: string): string | null {
  const found = Object.hasOwn(EXPLANATIONS, code) ? EXPLANATIONS[code] : undefined;
  if (!found) return null;
  const { means, hurts, remedy } = found;
  return `# ${code}\n\n${means}\n\n**Why it hurts.** ${hurts}\n\n**What to do.** ${remedy}\n`;
}
