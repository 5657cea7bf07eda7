/** Texts inside Markdown, which must not be taken for it. */

/** More backquotes than any line has, so that no text can end the fence. */
export function fenced(lines: readonly string[], language: string): string {
  const longest = Math.max(
    2,
    ...lines.flatMap((line) => line.match(/`+/g) ?? []).map(({ length }) => length),
  );
  const fence = '`'.repeat(longest + 1);
  return [fence + language, ...lines, fence].join('\n');
}
