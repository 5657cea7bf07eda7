/** The page that the panel shows, before any drawing is in it: it loads its own script and style and nothing else. */
import { DRAWING_STYLE } from '../../server/record/drawings/style.ts';

export interface PageParts {
  /** Addresses of the bundled script and style. */
  readonly script: string;
  readonly style: string;
  /** Where the host serves the extension's files from, as a policy names it. */
  readonly source: string;
  /** Letters and digits that nobody can foresee. */
  readonly nonce: string;
}

export const pageHtml = ({ script, style, source, nonce }: PageParts): string => `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="default-src 'none'; script-src 'nonce-${nonce}'; style-src ${source} 'nonce-${nonce}'">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>Drawings of the session</title>
<style nonce="${nonce}">${DRAWING_STYLE}</style>
<link rel="stylesheet" href="${style}">
</head>
<body>
<main>
<h1 id="session">Drawings</h1>
<p id="trouble" role="alert" hidden></p>
<p id="part" hidden></p>
<div id="empty" hidden>
<p>There is nothing to draw yet. Write down a mark and the setup on it; the drawings grow while you type.</p>
<pre>mark PM-14
  height      6.284 m orthometric
setup BASE on PM-14 at 07:50
  measured    1.284 m to arp</pre>
</div>
<div id="drawings"></div>
</main>
<script nonce="${nonce}" src="${script}"></script>
</body>
</html>
`;
