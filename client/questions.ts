/** From question to question of a session: each `?` is selected in turn, and where there are answers to choose, they are offered. */
import {
  CodeActionKind,
  commands,
  languages,
  Range,
  Selection,
  TextEditorRevealType,
  window,
  type CodeAction,
  type CompletionList,
  type Disposable,
  type Position,
  type TextDocument,
  type TextEditor,
} from 'vscode';
import { isSession } from './in-front.ts';

/** While a question is being answered, Tab leads to the next one. */
const ANSWERING = 'tribrach.answering';

export function registerQuestions(): readonly Disposable[] {
  let line: number | null = null;
  const answering = (at: number | null) => {
    line = at;
    void commands.executeCommand('setContext', ANSWERING, at !== null);
  };
  const go = (step: 1 | -1) => async () => {
    const editor = window.activeTextEditor;
    if (!editor || !isSession(editor.document)) return;
    const next = questionFrom(editor, step);
    if (!next) {
      answering(null);
      void window.showInformationMessage('No question is open in this session.');
      return;
    }
    answering(next.start.line);
    await askAt(editor, next);
  };
  return [
    commands.registerCommand('tribrach.nextQuestion', go(1)),
    commands.registerCommand('tribrach.previousQuestion', go(-1)),
    window.onDidChangeTextEditorSelection(({ selections: [first] }) => {
      if (line !== null && first?.active.line !== line) answering(null);
    }),
    window.onDidChangeActiveTextEditor(() => answering(null)),
    commands.registerCommand('tribrach.answerQuestion', async (at: unknown) => {
      const editor = window.activeTextEditor;
      if (!editor || !isSession(editor.document) || !(at instanceof Range)) return;
      answering(at.start.line);
      await askAt(editor, at);
    }),
    languages.registerCodeActionsProvider(
      { language: 'tribrach' },
      { provideCodeActions: (document, { start }) => answersFor(document, start) },
      { providedCodeActionKinds: [CodeActionKind.QuickFix] },
    ),
  ];
}

/** Nothing is written: the question is selected, and what can be chosen is offered. */
function answersFor(document: TextDocument, at: Position): CodeAction[] {
  const question = questionAt(document, at);
  if (!question) return [];
  const command = { title: 'Answer', command: 'tribrach.answerQuestion', arguments: [question] };
  return [{ title: 'Answer this question', kind: CodeActionKind.QuickFix, command }];
}

/** Selects a question; the list of answers opens only where there is one. */
export async function askAt(editor: TextEditor, question: Range): Promise<void> {
  editor.selection = new Selection(question.start, question.end);
  editor.revealRange(question, TextEditorRevealType.InCenterIfOutsideViewport);
  const { items } = await commands.executeCommand<CompletionList>(
    'vscode.executeCompletionItemProvider',
    editor.document.uri,
    question.end,
  );
  const still =
    editor === window.activeTextEditor &&
    editor.selection.isEqual(new Selection(question.start, question.end));
  if (items.length > 0 && still) await commands.executeCommand('editor.action.triggerSuggest');
}

/** The nearest one behind or before the cursor, else the first or the last of the text. */
function questionFrom(editor: TextEditor, step: 1 | -1): Range | undefined {
  const all = questionsIn(editor.document);
  const { start, end } = editor.selection;
  return step === 1
    ? (all.find((one) => one.start.isAfterOrEqual(end)) ?? all[0])
    : (all.findLast((one) => one.end.isBeforeOrEqual(start)) ?? all.at(-1));
}

const questionAt = (document: TextDocument, at: Position) =>
  questionsOf(document, at.line).find((one) => one.contains(at));

export const questionsIn = (document: TextDocument): Range[] =>
  Array.from({ length: document.lineCount }, (_, line) => line).flatMap((line) =>
    questionsOf(document, line),
  );

/** Each lone `?` of a line, quoted or not; a comment asks nothing. */
function questionsOf(document: TextDocument, line: number): Range[] {
  const text = document.lineAt(line).text.replace(/(^|\s)#(?=[^"]*(?:"[^"]*"[^"]*)*$).*$/, '$1');
  return [...text.matchAll(/(?<=[\s"])\?(?=[\s",]|$)/g)].map(
    ({ index }) => new Range(line, index, line, index + 1),
  );
}
