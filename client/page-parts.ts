/** Where a page in a panel loads its own script and style from, and what it may load at all. */
import { Uri, type Webview } from 'vscode';
import type { PageParts } from './panel/page-html.ts';

/** @param script name of the bundled script; all pages share one style */
export function pageParts(webview: Webview, folder: Uri, script: string): PageParts {
  const address = (file: string) => webview.asWebviewUri(Uri.joinPath(folder, file)).toString();
  return {
    script: address(`${script}.js`),
    style: address('panel.css'),
    source: webview.cspSource,
    nonce: crypto.randomUUID().replaceAll('-', ''),
  };
}
