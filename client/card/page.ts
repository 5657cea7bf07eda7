/** The page of the key card: it shows what it is sent, copies a number when asked, and marks the cursor's setup. */
import type { FromCard, ToCard } from './messages.ts';

declare function acquireVsCodeApi(): {
  postMessage(message: FromCard): void;
  setState(state: { readonly address: string }): void;
};

const editor = acquireVsCodeApi();
const at = (id: string) => document.getElementById(id) as HTMLElement;
const cards = at('cards');
let shown = '';
let marked: string | null = null;

addEventListener('message', ({ data }: MessageEvent<ToCard>) => {
  at('trouble').textContent = data.kind === 'trouble' ? data.sentence : '';
  at('trouble').hidden = data.kind !== 'trouble';
  if (data.kind === 'trouble') return;
  editor.setState({ address: data.address });
  at('session').textContent = `What to key: ${data.session}`;
  show(data.html);
  mark(data.here);
});

/** Whoever stands on a button stays there, although its number may have changed. */
function show(html: string): void {
  if (html === shown) return;
  const buttons = () => [...cards.querySelectorAll<HTMLElement>('button')];
  const focused = buttons().indexOf(document.activeElement as HTMLElement);
  cards.innerHTML = html;
  shown = html;
  if (focused >= 0) buttons()[focused]?.focus({ preventScroll: true });
}

function mark(setup: string | null): void {
  for (const card of cards.querySelectorAll<HTMLElement>('.card')) {
    const here = card.dataset['setup'] === setup;
    card.classList.toggle('card-here', here);
    if (here) card.setAttribute('aria-current', 'location');
    else card.removeAttribute('aria-current');
    if (here && setup !== marked) card.scrollIntoView({ block: 'nearest' });
  }
  marked = setup;
}

cards.addEventListener('click', ({ target }) => {
  const button = (target as Element).closest<HTMLElement>('[data-copy]');
  const text = button?.dataset['copy'];
  if (!button || text === undefined) return;
  editor.postMessage({ kind: 'copy', text });
  at('said').textContent = `Copied ${text}`;
  button.textContent = 'Copied';
  setTimeout(() => (button.textContent = 'Copy'), 1500);
});
at('print').addEventListener('click', () => editor.postMessage({ kind: 'print' }));
addEventListener('keydown', ({ key }) => {
  if (key === 'Escape') editor.postMessage({ kind: 'leave' });
});
editor.postMessage({ kind: 'ready' });
