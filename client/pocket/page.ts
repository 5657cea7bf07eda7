/** The pocket page: a session typed or pasted on a phone, and at once what to key, what is wrong, and the verdict. */
import { openDocument } from '../../grammar/document.ts';
import { saidBy } from '../../grammar/fault.ts';
import type { Edit } from '../../server/findings/finding.ts';
import { faultMessage } from '../../server/findings/program/fault.ts';
import { inspect, type Inspection } from '../../server/inspect.ts';
import { isRefusal } from '../../server/quantities/refusal.ts';
import { cardsHtml } from '../../server/record/card/card-html.ts';
import { CARD_STYLE } from '../../server/record/card/card-style.ts';
import { newSession } from '../../server/record/notes/new-session.ts';
import { verdictOf } from '../../server/record/verdict.ts';
import type { Files } from '../../server/session/files.ts';
import { offsetsOf } from '../../server/session/where.ts';
import { loadKept, saveKept } from './kept-sessions.ts';
import { findingList } from './shown.ts';

const TABS = ['notes', 'card', 'findings'] as const;
type Tab = (typeof TABS)[number];

const at = <Kind extends HTMLElement>(id: string) => document.getElementById(id) as Kind;
const text = at<HTMLTextAreaElement>('text');
const which = at<HTMLSelectElement>('which');

const today = () => new Date().toLocaleDateString('sv-SE');
const kept = loadKept(localStorage);
const texts = new Map(kept?.texts ?? [[`${today()}.trib`, newSession(today())]]);
let current = kept?.current ?? [...texts.keys()][0] ?? '';
const attached = new Map<string, Uint8Array>();

/** Files that were added by hand, found by their name whatever folder the notes say. */
const files: Files = {
  document: (path) => {
    const bytes = files.bytes(path);
    return isRefusal(bytes) ? bytes : openDocument(path, new TextDecoder().decode(bytes));
  },
  bytes: (path) =>
    attached.get(path.split('/').pop() ?? '') ?? { refused: 'add it with “Add grids or points”' },
};

let waiting: ReturnType<typeof setTimeout> | undefined;

/** What cannot be worked out for the text as it is now must not stay for the one before: somebody may key it. */
function show(): void {
  try {
    showInspection();
  } catch (error) {
    at('verdict').textContent = 'Not judged.';
    at('next').textContent = '';
    at('tab-findings').textContent = 'Findings (not known)';
    for (const part of ['card', 'findings']) at(part).textContent = faultMessage(saidBy(error));
  }
}

function showInspection(): void {
  const inspection = inspect(openDocument(current, text.value), files);
  const { sentence, next } = verdictOf(inspection);
  at('verdict').textContent = sentence ?? '';
  at('next').textContent = next ?? '';
  at('tab-findings').textContent = `Findings (${inspection.findings.length})`;
  at('card').innerHTML = cardsHtml(inspection);
  at('findings').replaceChildren(
    ...findingList(inspection, {
      goTo,
      apply: (edits) => applyEdits(inspection, edits),
    }),
  );
}

/** The text is kept at once; what follows from it may wait until the next letter has been typed. */
function changed(): void {
  texts.set(current, text.value);
  if (!saveKept(localStorage, { texts, current }))
    at('kept').textContent =
      'This browser keeps nothing on this device. Save the text to a file before you leave the page.';
  clearTimeout(waiting);
  waiting = setTimeout(show, 150);
}

function open(name: string): void {
  current = name;
  text.value = texts.get(name) ?? '';
  which.replaceChildren(...[...texts.keys()].map((one) => new Option(one, one, one === name, one === name)));
  changed();
  show();
}

function goTo(start: number, end: number): void {
  select('notes');
  text.focus();
  text.setSelectionRange(start, end);
  const line = text.value.slice(0, start).split('\n').length;
  text.scrollTop = Math.max(0, (line - 4) * 21);
}

/** From the last edit to the first, so that none moves another; edits of other files are left to those. */
function applyEdits(inspection: Inspection, edits: readonly Edit[]): void {
  const own = edits
    .map((edit) => ({ edit, offsets: offsetsOf(inspection.session, edit.place) }))
    .filter(({ offsets }) => offsets?.path === current)
    .sort((one, other) => (other.offsets?.start ?? 0) - (one.offsets?.start ?? 0));
  for (const { edit, offsets } of own)
    if (offsets) text.value = text.value.slice(0, offsets.start) + edit.text + text.value.slice(offsets.end);
  changed();
  show();
}

function select(tab: Tab): void {
  for (const one of TABS) {
    at(one).hidden = one !== tab;
    at(`tab-${one}`).setAttribute('aria-selected', String(one === tab));
    at(`tab-${one}`).tabIndex = one === tab ? 0 : -1;
  }
}

function freeName(wanted: string): string {
  let name = wanted;
  for (let count = 2; texts.has(name); count++) name = wanted.replace(/(\.trib)?$/, ` ${count}$1`);
  return name;
}

async function openFile(input: HTMLInputElement): Promise<void> {
  const [file] = input.files ?? [];
  input.value = '';
  if (!file) return;
  const name = freeName(file.name);
  texts.set(name, await file.text());
  open(name);
}

async function attach(input: HTMLInputElement): Promise<void> {
  for (const file of input.files ?? []) attached.set(file.name, new Uint8Array(await file.arrayBuffer()));
  input.value = '';
  show();
}

function save(): void {
  const link = document.createElement('a');
  link.href = URL.createObjectURL(new Blob([text.value], { type: 'text/plain' }));
  link.download = current;
  link.click();
  setTimeout(() => URL.revokeObjectURL(link.href), 10_000);
}

text.addEventListener('input', changed);
which.addEventListener('change', () => open(which.value));
at('add').addEventListener('click', () => {
  const name = freeName(`${today()}.trib`);
  texts.set(name, newSession(today()));
  open(name);
});
at('drop').addEventListener('click', () => {
  if (!confirm(`Delete ${current} from this device? Save it to a file first if it is needed.`)) return;
  texts.delete(current);
  if (texts.size === 0) texts.set(`${today()}.trib`, newSession(today()));
  open([...texts.keys()][0] ?? '');
});
at('card').addEventListener('click', ({ target }) => {
  const button = (target as Element).closest<HTMLElement>('[data-copy]');
  const number = button?.dataset['copy'];
  if (!button || number === undefined) return;
  void navigator.clipboard.writeText(number).then(() => (button.textContent = 'Copied'));
});
at('save').addEventListener('click', save);
at('open').addEventListener('change', (event) => void openFile(event.target as HTMLInputElement));
at('attach').addEventListener('change', (event) => void attach(event.target as HTMLInputElement));
TABS.forEach((tab, index) => {
  at(`tab-${tab}`).addEventListener('click', () => select(tab));
  at(`tab-${tab}`).addEventListener('keydown', ({ key }) => {
    const step = key === 'ArrowRight' ? 1 : key === 'ArrowLeft' ? -1 : 0;
    const next = TABS[(index + step + TABS.length) % TABS.length];
    if (step === 0 || !next) return;
    select(next);
    at(`tab-${next}`).focus();
  });
});

const cardStyle = new CSSStyleSheet();
cardStyle.replaceSync(CARD_STYLE);
document.adoptedStyleSheets.push(cardStyle);
open(current);
select('notes');
