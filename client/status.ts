/** The status bar entry of a session in front: its verdict, or what keeps it from having one; it leads to the pages of the session. */
import { commands, MarkdownString, StatusBarAlignment, ThemeColor, window, type Disposable } from 'vscode';
import { State, type BaseLanguageClient } from 'vscode-languageclient';
import { CLASS_MEANINGS } from '../server/derive/trust/class-meanings.ts';
import type { ToldVerdict } from '../server/protocol/verdict.ts';
import { frontSession, sessionInFront } from './in-front.ts';

interface Face {
  readonly text: string;
  /** Read aloud in place of the text and its sign. */
  readonly spoken: string;
  readonly tooltip: string;
  readonly command: string;
  readonly alarming: boolean;
}

export function registerStatus(client: BaseLanguageClient): readonly Disposable[] {
  const item = window.createStatusBarItem('tribrach.verdict', StatusBarAlignment.Right, 100);
  item.name = 'Verdict of the Survey Session';
  const verdicts = new Map<string, ToldVerdict>();
  let state = State.Starting;

  function follow(): void {
    const session = frontSession();
    if (!session) return item.hide();
    const verdict = verdicts.get(session.uri.toString());
    const { text, spoken, tooltip, command, alarming } =
      state === State.Running ? faceOf(verdict) : SERVER_FACES[state];
    item.text = text;
    item.accessibilityInformation = { label: spoken, role: 'button' };
    item.tooltip = new MarkdownString(tooltip);
    item.command = command;
    item.backgroundColor = alarming ? new ThemeColor('statusBarItem.warningBackground') : undefined;
    item.show();
  }

  follow();
  return [
    item,
    commands.registerCommand(CHOOSE, () => choosePage(verdicts)),
    window.onDidChangeActiveTextEditor(follow),
    window.onDidChangeVisibleTextEditors(follow),
    client.onNotification('tribrach/verdict', (told: ToldVerdict) => {
      verdicts.set(told.uri, told);
      follow();
    }),
    client.onDidChangeState(({ newState }) => {
      state = newState;
      if (newState !== State.Running) verdicts.clear();
      follow();
    }),
  ];
}

const CHOOSE = 'tribrach.showPages';
const CLICK_TO_CHOOSE = 'Click for findings, drawings, what to key, and report.';

/** The state is one of trust's classes, or `no-day`. */
const SIGNS: Readonly<Record<string, string>> = {
  bracketed: '$(pass-filled)',
  held: '$(pass-filled)',
  'not-opened': '$(pass)',
  'not-closed': '$(pass)',
  'position-only': '$(circle-large-outline)',
  'height-only': '$(circle-large-outline)',
  'in-doubt': '$(error)',
  unchecked: '$(circle-large-outline)',
  'no-day': '$(circle-large-outline)',
};

function faceOf(told: ToldVerdict | undefined): Face {
  if (!told)
    return {
      ...plain('$(sync) checking', 'The session is being checked.'),
      command: CHOOSE,
      alarming: false,
    };
  const { state, verdict, next, findings } = told;
  const words = wordsOf(state, findings);
  const sentences = [verdict ?? 'No base is set up in these notes.', next].filter((one) => one !== null);
  return {
    text: `${signOf(state, findings)} ${words}`,
    spoken: `Verdict of the session: ${words}. ${sentences.join(' ')} ${CLICK_TO_CHOOSE}`,
    tooltip: [...meaningOf(state), ...sentences, CLICK_TO_CHOOSE].map(escaped).join('\n\n'),
    command: CHOOSE,
    alarming: state === 'in-doubt' || findings.error > 0,
  };
}

/** The class of the day, for whoever does not know the word. */
function meaningOf(state: string): string[] {
  const meaning = (CLASS_MEANINGS as Readonly<Record<string, string>>)[state];
  return meaning === undefined ? [] : [`${state.replace('-', ' ')}: ${meaning}`];
}

type Counts = ToldVerdict['findings'];

/** An error comes before what the day is worth, and is never under the sign of a day that is proved. */
function wordsOf(state: string, { error, warning }: Counts): string {
  const day = state === 'no-day' ? 'no base yet' : state.replace('-', ' ');
  if (error > 0)
    return state === 'in-doubt' ? `${counted(error, 'error')}, in doubt` : counted(error, 'error');
  return warning > 0 ? `${day}, ${counted(warning, 'warning')}` : day;
}

const signOf = (state: string, { error, warning }: Counts): string =>
  error > 0 ? '$(error)' : warning > 0 && state !== 'in-doubt' ? '$(warning)' : (SIGNS[state] ?? '$(info)');

const counted = (count: number, what: string) => `${count} ${what}${count === 1 ? '' : 's'}`;

/** Names out of a session stay text in the tooltip. */
const escaped = (sentence: string) => sentence.replace(/[\\`*_{}[\]()#+\-.!|<>~&$]/g, '\\$&');

const plain = (text: string, sentence: string) => ({ text, spoken: sentence, tooltip: sentence });

const STARTING: Face = {
  ...plain('$(loading~spin) starting', 'The language server is starting.'),
  command: CHOOSE,
  alarming: false,
};
const STOPPED: Face = {
  ...plain(
    '$(warning) not checked',
    'The language server has stopped, and nothing is checked. Click to restart it.',
  ),
  command: 'tribrach.restartServer',
  alarming: true,
};
const SERVER_FACES: Readonly<Record<Exclude<State, State.Running>, Face>> = {
  [State.Starting]: STARTING,
  [State.StartFailed]: STOPPED,
  [State.Stopped]: STOPPED,
};

const PAGES = [
  { label: '$(warning) Findings', command: 'workbench.actions.view.problems' },
  { label: '$(graph) Drawings', command: 'tribrach.showDrawings' },
  { label: '$(key) What to key', command: 'tribrach.showWhatToKey' },
  { label: '$(book) Report', command: 'tribrach.saveReport' },
] as const;

async function choosePage(verdicts: ReadonlyMap<string, ToldVerdict>): Promise<void> {
  const session = sessionInFront();
  if (!session) return;
  const told = verdicts.get(session.toString());
  const { error = 0, warning = 0 } = told?.findings ?? {};
  const counts = `${counted(error, 'error')}, ${counted(warning, 'warning')}`;
  const chosen = await window.showQuickPick(
    PAGES.map((page, index) => ({ ...page, description: index === 0 ? counts : '' })),
    {
      title: told ? wordsOf(told.state, told.findings) : 'Pages of the session',
      placeHolder: told?.next ?? 'What to show',
    },
  );
  if (chosen) await commands.executeCommand(chosen.command);
}
