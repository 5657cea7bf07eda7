/** The page that shows the key card, before a card is in it: it loads its own script and style and nothing else. */
import { CARD_STYLE } from '../../server/record/card/card-style.ts';
import type { PageParts } from '../panel/page-html.ts';

export const cardPageHtml = ({ script, style, source, nonce }: PageParts): string => `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="default-src 'none'; script-src 'nonce-${nonce}'; style-src ${source} 'nonce-${nonce}'">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>What to key</title>
<link rel="stylesheet" href="${style}">
<style nonce="${nonce}">${CARD_STYLE}</style>
</head>
<body>
<main>
<h1 id="session">What to key</h1>
<p id="trouble" role="alert" hidden></p>
<div id="cards"></div>
<p><button id="print" type="button" class="card-copy">Save as a page to print</button></p>
<p id="said" role="status" class="card-unseen"></p>
</main>
<script nonce="${nonce}" src="${script}"></script>
</body>
</html>
`;
