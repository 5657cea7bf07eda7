/** The page of the drawings: it shows what it is sent, leads from a drawn thing to its line, and marks the cursor's line. */
import type { FromPage, Line, Remembered, ToPage } from './messages.ts';

declare function acquireVsCodeApi(): {
  postMessage(message: FromPage): void;
  setState(state: Remembered): void;
};

const editor = acquireVsCodeApi();
const at = (id: string) => document.getElementById(id) as HTMLElement;
const drawings = at('drawings');
let cursor: (Line & { readonly entry: number }) | null = null;

addEventListener('message', ({ data }: MessageEvent<ToPage>) => {
  if (data.kind === 'drawings') show(data);
  else if (data.kind === 'trouble') tell('trouble', data.sentence);
  else {
    cursor = data;
    markCursor(true);
  }
});

function show({ session, address, drawings: sent, part }: Extract<ToPage, { kind: 'drawings' }>): void {
  editor.setState({ address });
  tell('trouble', '');
  at('session').textContent = `Drawings of ${session}`;
  at('empty').hidden = sent.length > 0;
  tell('part', part ?? '');
  const focused = placeOfFocus();
  const known = new Map([...drawings.querySelectorAll('section')].map((one) => [one.dataset['name'], one]));
  const sections = sent.map(({ name, heading, svg }) => {
    const section = known.get(name) ?? emptySection(name);
    const title = section.querySelector('h2');
    if (title && title.textContent !== heading) title.textContent = heading;
    const picture = section.querySelector('div');
    // What has not changed stays, so that whoever points at it or hears it read is not disturbed.
    if (picture && shownIn.get(section) !== svg) picture.innerHTML = svg;
    shownIn.set(section, svg);
    return section;
  });
  if (sections.some((section, index) => drawings.children[index] !== section) || known.size > sections.length)
    drawings.replaceChildren(...sections);
  focused?.();
  markCursor(false);
}
const shownIn = new WeakMap<Element, string>();

function emptySection(name: string): HTMLElement {
  const section = document.createElement('section');
  section.dataset['name'] = name;
  section.append(document.createElement('h2'), document.createElement('div'));
  return section;
}

function tell(id: 'trouble' | 'part', sentence: string): void {
  at(id).textContent = sentence;
  at(id).hidden = sentence === '';
}

/** Gives the focus back to the thing that had it, wherever an edit has moved its line. */
function placeOfFocus(): (() => void) | null {
  const thing = document.activeElement?.closest('.thing');
  const section = thing?.closest('section');
  if (!thing || !section) return null;
  const index = [...section.querySelectorAll('.thing')].indexOf(thing);
  return () => {
    if (thing.isConnected) return;
    const name = section.dataset['name'];
    const again = [...drawings.querySelectorAll('section')].find((one) => one.dataset['name'] === name);
    again?.querySelectorAll<SVGElement>('.thing')[index]?.focus({ preventScroll: true });
  };
}

/** Things of the cursor's own line; where there are none, those of the entry that the line belongs to. */
function markCursor(mayScroll: boolean): void {
  for (const thing of drawings.querySelectorAll('.thing.here')) {
    thing.classList.remove('here');
    thing.removeAttribute('aria-current');
  }
  if (!cursor) return;
  const { path, line, entry } = cursor;
  const exact = thingsAt({ path, line });
  const here = exact.length > 0 ? exact : thingsAt({ path, line: entry });
  for (const thing of here) {
    thing.classList.add('here');
    thing.setAttribute('aria-current', 'location');
  }
  if (mayScroll && !here.some(isInView)) here[0]?.scrollIntoView({ block: 'nearest' });
}

const thingsAt = ({ path, line }: Line) =>
  [...drawings.querySelectorAll('.thing')].filter(
    (thing) => thing.getAttribute('data-place') === `${path}:${line}`,
  );

function isInView(thing: Element): boolean {
  const { top, bottom } = thing.getBoundingClientRect();
  return bottom > 0 && top < innerHeight;
}

// The host's own page would take a click on a link for a wish to leave; Enter on a link comes as a click, too.
drawings.addEventListener('click', (event) => {
  const place = (event.target as Element).closest('.thing')?.getAttribute('data-place');
  if (place === null || place === undefined) return;
  event.preventDefault();
  event.stopPropagation();
  const colon = place.lastIndexOf(':');
  editor.postMessage({ kind: 'goTo', path: place.slice(0, colon), line: Number(place.slice(colon + 1)) });
});

addEventListener('keydown', ({ key }) => {
  if (key === 'Escape') editor.postMessage({ kind: 'leave' });
});

let told = 0;
let waiting: ReturnType<typeof setTimeout> | undefined;

/** Drawings are laid out anew for each width; until they arrive the old ones shrink. */
function tellWidth(): void {
  const width = Math.floor(drawings.clientWidth);
  if (width === told || width === 0) return;
  told = width;
  editor.postMessage({ kind: 'width', width });
}
new ResizeObserver(() => {
  clearTimeout(waiting);
  waiting = setTimeout(tellWidth, told === 0 ? 0 : 150);
}).observe(drawings);
