/** “Explain” at a finding: the page of its code, which is part of the package, beside the text. */
import {
  CodeActionKind,
  commands,
  languages,
  type CodeAction,
  type Diagnostic,
  type Disposable,
} from 'vscode';
import { pageOfFinding } from './finding-pages.ts';

export function registerExplain(): readonly Disposable[] {
  return [
    commands.registerCommand('tribrach.explain', async (code: unknown) => {
      if (typeof code === 'string')
        await commands.executeCommand('markdown.showPreviewToSide', pageOfFinding(code));
    }),
    languages.registerCodeActionsProvider(
      { language: 'tribrach' },
      {
        provideCodeActions: (_document, _range, { diagnostics }) => {
          const codes = new Set(diagnostics.map(codeOf).filter((code) => code !== null));
          return [...codes].map(explainAction);
        },
      },
      { providedCodeActionKinds: [CodeActionKind.QuickFix] },
    ),
  ];
}

const explainAction = (code: string): CodeAction => ({
  title: `Explain ${code}`,
  kind: CodeActionKind.QuickFix,
  command: { title: 'Explain', command: 'tribrach.explain', arguments: [code] },
});

function codeOf({ source, code }: Diagnostic): string | null {
  if (source !== 'tribrach' || code === undefined) return null;
  return String(typeof code === 'object' ? code.value : code);
}
