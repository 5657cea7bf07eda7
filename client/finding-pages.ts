/** The code of a finding leads to its page, which the server writes: it is part of the package, and nothing is fetched. */
import { Uri, type Diagnostic } from 'vscode';
import type { Middleware } from 'vscode-languageclient';

export const pageOfFinding = (code: string): Uri =>
  Uri.from({ scheme: 'tribrach', path: `/${code.replace('/', ' ')}.md`, query: `explains=${code}` });

/** As findings come from the server, pushed or pulled. */
export const linkedToPages: Pick<Middleware, 'handleDiagnostics' | 'provideDiagnostics'> = {
  handleDiagnostics: (uri, diagnostics, next) => {
    diagnostics.forEach(link);
    next(uri, diagnostics);
  },
  provideDiagnostics: async (document, previous, token, next) => {
    const report = await next(document, previous, token);
    if (report && 'items' in report) report.items.forEach(link);
    return report;
  },
};

function link(diagnostic: Diagnostic): void {
  const { code } = diagnostic;
  if (typeof code === 'string') diagnostic.code = { value: code, target: pageOfFinding(code) };
}
