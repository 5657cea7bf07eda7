/** Pages and broken samples with the markers of what is found in them now, and what the pages say where the program has it; those of unknown codes are left alone, and so is everything else. */
import { readFileSync, writeFileSync } from 'node:fs';
import { CATALOGUE } from '../server/findings/catalogue.ts';
import { allPages, EXPLANATIONS, explanationsFrom, markedSnippet, type Page } from './pages.ts';
import { brokenSamples, markedSample, promisedBy } from './samples.ts';

/**
 * @param only parts of file names; all files where there is none
 * @returns the files that have changed
 */
export function bless(only: readonly string[]): string[] {
  const wanted = ({ file }: { readonly file: string }) =>
    only.length === 0 || only.some((part) => file.includes(part));
  const pages = allPages()
    .filter((page) => wanted(page) && isKnown(page))
    .map((page) => ({ ...page, marked: markedPage(page) }));
  const samples = brokenSamples()
    .filter((sample) => wanted(sample) && promisedBy(sample) !== null)
    .map((sample) => ({ ...sample, marked: markedSample(sample) }));
  const explanations = [
    {
      file: EXPLANATIONS,
      text: readFileSync(EXPLANATIONS, 'utf8'),
      marked: explanationsFrom(allPages().filter(isKnown)),
    },
  ].filter(wanted);
  const changed = [...pages, ...samples, ...explanations].filter(({ text, marked }) => text !== marked);
  for (const { file, marked } of changed) writeFileSync(file, marked);
  return changed.map(({ file }) => file);
}

const isKnown = (page: Page) => CATALOGUE.some(({ code }) => code === page.code);

function markedPage({ text, code, snippets }: Page): string {
  let kept = 0;
  const pieces = snippets
    .filter(({ role }) => role !== 'given')
    .map((snippet) => {
      const piece = text.slice(kept, snippet.start) + markedSnippet(snippet, code);
      kept = snippet.end;
      return piece;
    });
  return pieces.join('') + text.slice(kept);
}
