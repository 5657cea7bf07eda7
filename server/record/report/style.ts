/** How a report looks: on a desk, on a phone, in the dark and on paper. */
import { DRAWING_STYLE } from '../drawings/style.ts';

const LIGHT =
  '--ink:#1b2530;--quiet:#55606b;--faint:#cdd2d6;--paper:#fdfcf9;--wash:#ebe9e2;--good:#0b5d6b;--bad:#a82c12;--accent:#1f5fa8';
const DARK =
  '--ink:#e6e4df;--quiet:#a3adb6;--faint:#434c56;--paper:#14181d;--wash:#252c34;--good:#6cc6d3;--bad:#ff9373;--accent:#8ab8f0';
/** Ink on white: paper has no tint, and its hairlines are darker. */
const PRINT =
  '--ink:#000;--quiet:#444;--faint:#b5b5b5;--paper:#fff;--wash:#ededed;--good:#0b5d6b;--bad:#a82c12;--accent:#1f5fa8';

export const REPORT_STYLE = `
:root{color-scheme:light dark;${LIGHT}}
@media (prefers-color-scheme:dark){:root{${DARK}}}
@media print{:root{color-scheme:light;${PRINT}}}
*{box-sizing:border-box}
html{-webkit-text-size-adjust:100%;text-size-adjust:100%}
body{margin:0;background:var(--paper);color:var(--ink);font:16px/1.5 "Segoe UI","Helvetica Neue",Arial,"Liberation Sans",sans-serif;overflow-wrap:anywhere}
main,header.page,nav{max-width:712px;margin:0 auto;padding:0 16px}
a{color:inherit;text-decoration-color:var(--faint);text-underline-offset:3px}
a:hover{text-decoration-color:currentColor}
:focus-visible{outline:2px solid var(--accent);outline-offset:2px}
h1,h2,h3{line-height:1.2;font-weight:650;letter-spacing:-.01em;break-after:avoid}
h1{font-size:1.9rem;margin:2.6rem 0 .4rem}
h2{font-size:1.25rem;margin:2.8rem 0 .9rem;padding-top:.7rem;border-top:1px solid var(--faint)}
h3{font-size:1rem;margin:1.8rem 0 .5rem}
p{margin:.5rem 0}
.quiet,figcaption,caption{color:var(--quiet)}
.small{font-size:.86rem}
.bad{color:var(--bad);font-weight:650}
.good{color:var(--good)}
.number{font-variant-numeric:tabular-nums;white-space:nowrap}
dl.facts{display:grid;grid-template-columns:max-content 1fr;gap:.1rem 1rem;margin:.8rem 0;font-size:.92rem}
dl.facts dt{color:var(--quiet)}
dl.facts dd{margin:0}
.verdict{display:grid;grid-template-columns:auto 1fr;gap:.2rem .9rem;margin:1.4rem 0 1.6rem;align-items:start;break-inside:avoid}
.verdict svg{width:34px;height:34px;margin-top:.2rem;grid-row:1/span 3}
.verdict p{grid-column:2;margin:0}
.verdict .sentence{font-size:1.22rem;line-height:1.4;font-weight:500}
.verdict .label{font-size:.8rem;letter-spacing:.06em;text-transform:uppercase;color:var(--quiet)}
figure{margin:1.2rem 0 1.6rem;break-inside:avoid}
figcaption{font-size:.86rem;margin-top:.6rem}
.phone{display:none}
@media screen and (max-width:711px){.desk{display:none}.phone{display:block}h1{font-size:1.55rem;margin-top:1.6rem}}
table{border-collapse:collapse;width:100%;font-size:.9rem;margin:.6rem 0 1.2rem;font-variant-numeric:tabular-nums}
caption{text-align:left;font-size:.86rem;padding-bottom:.3rem}
th,td{text-align:left;vertical-align:top;padding:.32rem .7rem .32rem 0;border-bottom:1px solid var(--faint)}
th{font-weight:500}
thead th{color:var(--quiet);font-weight:500;border-bottom-color:var(--quiet)}
th.right,td.right{text-align:right}
thead th{overflow-wrap:normal}
@media (min-width:712px){th[scope=row]{min-width:8.5rem}}
th:last-child,td:last-child{padding-right:0}
thead{display:table-header-group;break-inside:avoid}
tr{break-inside:avoid}
@media screen and (max-width:711px){
table{font-size:.84rem}
table.stack thead{position:absolute;width:1px;height:1px;overflow:hidden;clip-path:inset(50%)}
table.stack,table.stack tbody,table.stack tr,table.stack th,table.stack td{display:block}
table.stack caption{display:block}
table.stack tr{border-bottom:1px solid var(--faint);padding:.45rem 0}
table.stack th,table.stack td{border:0;padding:0;text-align:left}
table.stack td:empty{display:none}
table.stack td[data-label]::before{content:attr(data-label) " ";color:var(--quiet)}
}
.finding{margin:1rem 0;padding-left:.9rem;border-left:3px solid var(--faint);break-inside:avoid}
.finding.error{border-left:6px solid var(--bad)}
.finding.warning{border-left:6px double var(--ink)}
.finding p{margin:.15rem 0}
.finding ul{margin:.3rem 0;padding-left:1.1rem;font-size:.9rem}
.finding .about{font-size:.86rem;color:var(--quiet)}
.finding .about b{color:var(--ink)}
ul,ol{padding-left:1.2rem}
li{margin:.2rem 0}
.story{font-size:.84rem;line-height:1.45;margin:0 0 .9rem;break-inside:avoid;scroll-margin-top:1rem}
.story p{margin:0;white-space:pre-wrap;font-variant-numeric:tabular-nums}
.story p:first-child{font-weight:650}
.story p+p{padding-left:1.2rem}
.story p.source{color:var(--quiet)}
details{border-bottom:1px solid var(--faint)}
summary{padding:.4rem 0;cursor:pointer;font-weight:500}
details[open]>summary{margin-bottom:.4rem}
:target{background:var(--wash)}
ol.written{list-style:none;counter-reset:line;padding:0;margin:.6rem 0;font:12.5px/1.5 ui-monospace,"SFMono-Regular",Consolas,"Liberation Mono",monospace;tab-size:2}
ol.written li{counter-increment:line;margin:0;padding-left:3.4rem;position:relative;white-space:pre-wrap;min-height:1.5em;scroll-margin-top:30vh}
ol.written li::before{content:counter(line);position:absolute;left:0;width:2.7rem;text-align:right;color:var(--quiet)}
nav ol{padding-left:1.4rem}
footer{max-width:712px;margin:3rem auto 2rem;padding:.8rem 16px 0;border-top:1px solid var(--faint);font-size:.84rem;color:var(--quiet)}
@media (prefers-reduced-motion:no-preference){html{scroll-behavior:smooth}}
@page{margin:17mm 16mm;@bottom-right{content:counter(page) " / " counter(pages);font:9pt "Helvetica Neue",Arial,"Liberation Sans",sans-serif;color:#444}}
@media print{
body{font-size:10.5pt;line-height:1.42}
main,header.page,nav,footer{max-width:none;padding:0}
h1{margin-top:0}
a{text-decoration:none}
h2{margin-top:2rem}
.session{break-before:page}
.session:first-of-type{break-before:auto}
ol.written{font-size:8.5pt}
.stories{columns:2;column-gap:8mm}
.story{font-size:8pt;line-height:1.35}
details::details-content{content-visibility:visible;display:block;height:auto;opacity:1}
summary{list-style:none;break-after:avoid}
summary::-webkit-details-marker{display:none}
p,li{orphans:3;widows:3}
dl.facts,table:not(:has(tbody tr:nth-child(9))){break-inside:avoid}
p:has(+table),thead,tbody tr:first-child,tbody tr:nth-last-child(2){break-after:avoid}
}
${DRAWING_STYLE}`;
