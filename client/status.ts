/** The status bar entry, shown while a session file is in front: whether the language server is at work. */
import { languages, window, StatusBarAlignment, type Disposable } from 'vscode';

export interface Status extends Disposable {
  show(state: keyof typeof faces): void;
}

export function createStatus(): Status {
  const item = window.createStatusBarItem('tribrach.status', StatusBarAlignment.Right, 100);
  item.name = 'Tribrach';
  item.command = 'tribrach.showWhatToKey';
  const follow = (): void => {
    const document = window.activeTextEditor?.document;
    if (document !== undefined && languages.match({ language: 'tribrach' }, document) > 0) item.show();
    else item.hide();
  };
  const following = window.onDidChangeActiveTextEditor(follow);
  follow();
  return {
    show: (state) => {
      item.text = faces[state].text;
      item.tooltip = faces[state].tooltip;
      item.command = faces[state].command;
    },
    dispose: () => {
      following.dispose();
      item.dispose();
    },
  };
}

const faces = {
  starting: {
    text: '$(loading~spin) Tribrach',
    tooltip: 'The language server is starting.',
    command: undefined,
  },
  running: {
    text: '$(check) Tribrach',
    tooltip: 'The session is checked while you type. Click for what to key.',
    command: 'tribrach.showWhatToKey',
  },
  stopped: {
    text: '$(warning) Tribrach',
    tooltip: 'The language server has stopped; nothing is checked. Click to restart it.',
    command: 'tribrach.restartServer',
  },
} as const;
