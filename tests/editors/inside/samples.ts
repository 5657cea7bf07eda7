/** The editor shows on the broken samples what the command line says: the same codes at the same places. */
import { DiagnosticSeverity, languages, Uri, window, workspace, type Diagnostic } from 'vscode';
import { eventually, same, type Tests } from './session.ts';

interface Found {
  readonly files: readonly { readonly path: string; readonly findings: readonly FindingAsJson[] }[];
}
interface FindingAsJson {
  readonly code: string;
  readonly severity: string;
  readonly line: number;
  readonly column: number;
  readonly endLine: number;
  readonly endColumn: number;
}

export const sampleTests: Tests = {
  'the broken samples show what the command line says': async () => {
    const folder = workspace.workspaceFolders?.[0]?.uri;
    if (folder === undefined) throw new Error('the editor has no folder open');
    const json = await workspace.fs.readFile(Uri.joinPath(folder, 'found-by-command-line.json'));
    const { files } = JSON.parse(new TextDecoder().decode(json)) as Found;
    const broken = files.filter(({ path }) => path.startsWith('samples/broken/'));
    if (broken.length < 20) throw new Error(`only ${broken.length} broken samples are there`);
    for (const { path, findings } of broken) {
      const uri = Uri.joinPath(folder, path);
      await window.showTextDocument(await workspace.openTextDocument(uri));
      const wanted = findings.map(toldByCommandLine).sort().join('\n');
      const shown = () => languages.getDiagnostics(uri).map(shownByEditor).sort().join('\n');
      await eventually(path, () => shown() === wanted || undefined).catch(() => same(path, shown(), wanted));
    }
  },
};

const toldByCommandLine = ({ code, severity, line, column, endLine, endColumn }: FindingAsJson): string =>
  `${severity} ${code} ${line}:${column}-${endLine}:${endColumn}`;

function shownByEditor({ code, severity, range: { start, end } }: Diagnostic): string {
  const place = `${start.line + 1}:${start.character + 1}-${end.line + 1}:${end.character + 1}`;
  return `${DiagnosticSeverity[severity].toLowerCase()} ${String(typeof code === 'object' ? code.value : code)} ${place}`;
}
