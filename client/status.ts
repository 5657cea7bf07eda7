/** The status bar entry of a session in front: its verdict, or what keeps it from having one; it leads to the drawings. */
import { MarkdownString, StatusBarAlignment, ThemeColor, window, type Disposable } from 'vscode';
import { State, type BaseLanguageClient } from 'vscode-languageclient';
import type { ToldVerdict } from '../server/protocol/verdict.ts';
import { frontSession } from './in-front.ts';

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

const DRAW = 'tribrach.showDrawings';
const CLICK_TO_DRAW = 'Click for the drawings of the session.';

/** The state is one of trust's classes, or `no-day`. */
const SIGNS: Readonly<Record<string, string>> = {
  bracketed: '$(pass-filled)',
  held: '$(pass-filled)',
  'not-opened': '$(pass)',
  'not-closed': '$(pass)',
  'in-doubt': '$(error)',
  unchecked: '$(circle-large-outline)',
  'no-day': '$(circle-large-outline)',
};

function faceOf(told: ToldVerdict | undefined): Face {
  if (!told)
    return { ...plain('$(sync) checking', 'The session is being checked.'), command: DRAW, alarming: false };
  const { state, verdict, next, findings } = told;
  const day = state === 'no-day' ? 'no base yet' : state.replace('-', ' ');
  const errors =
    findings.error === 0 ? '' : `, ${findings.error} ${findings.error === 1 ? 'error' : 'errors'}`;
  const sentences = [verdict ?? 'No base is set up in these notes.', next].filter((one) => one !== null);
  return {
    text: `${SIGNS[state] ?? '$(info)'} ${day}${errors}`,
    spoken: `Verdict of the session: ${day}${errors}. ${sentences.join(' ')} ${CLICK_TO_DRAW}`,
    tooltip: [...sentences, CLICK_TO_DRAW].map(escaped).join('\n\n'),
    command: DRAW,
    alarming: state === 'in-doubt',
  };
}

/** Names out of a session stay text in the tooltip. */
const escaped = (sentence: string) => sentence.replace(/[\\`*_{}[\]()#+\-.!|<>~&$]/g, '\\$&');

const plain = (text: string, sentence: string) => ({ text, spoken: sentence, tooltip: sentence });

const STARTING: Face = {
  ...plain('$(loading~spin) starting', 'The language server is starting.'),
  command: DRAW,
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
