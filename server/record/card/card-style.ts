/** How a key card looks: in the colours of the page that it stands in, large enough to be read at a tripod. */
export const CARD_STYLE = `
.card{margin:0 0 1.5rem;padding:.25rem .75rem .5rem;border-left:4px solid transparent}
.card.card-here{border-left-color:var(--accent,#1f5f6b)}
.card h2{margin:.4rem 0 .6rem;padding:0;border:0;font-size:1.3rem;font-weight:650}
.card-mark{font-weight:400}
.card h3{margin:1.2rem 0 .3rem;font-size:1rem;font-weight:600}
.card-warning{margin:.4rem 0;padding:.15rem 0 .15rem .6rem;border-left:4px solid var(--warning,#b26a00)}
.card-lines{margin:0}
.card-line{display:grid;grid-template-columns:1fr;padding:.45rem 0;border-bottom:1px solid var(--faint,var(--line,#8886))}
.card-line dt{font-size:.9rem;opacity:.85}
.card-line dd{margin:0}
.card-figure{display:flex;flex-wrap:wrap;align-items:baseline;gap:.1em .6em;font-size:clamp(1.35rem,6.4vw,2rem);line-height:1.25;font-weight:600;font-variant-numeric:tabular-nums;overflow-wrap:anywhere}
.card-group{display:inline-block}
.card-group+.card-group{margin-inline-start:.22em}
.card-lesser .card-figure{font-size:1.15rem}
.card-words{font-size:1.2rem}
.card-unknown{font-weight:400;opacity:.85}
.card-keyed{font-size:1rem;font-variant-numeric:tabular-nums}
.card-agrees .card-keyed{color:var(--good,inherit)}
.card-differs .card-keyed{color:var(--bad,var(--error,#a3261d))}
.card-note,.card-cautions{font-size:.9rem;opacity:.85}
.card-copy{font:inherit;font-size:.85rem;font-weight:400;min-height:1.9rem;padding:.1rem .6rem;color:inherit;background:transparent;border:1px solid var(--faint,var(--line,#8886));border-radius:.3rem;cursor:pointer}
.card-copy:hover{border-color:currentColor}
.card-unseen{position:absolute;width:1px;height:1px;overflow:hidden;clip-path:inset(50%);white-space:nowrap}
@media (min-width:34rem){.card-line{grid-template-columns:9.5rem 1fr;column-gap:1rem;align-items:baseline}.card-line dd{grid-column:2}}
@media print{.card-copy{display:none}.card{break-inside:avoid;border-left:0;padding-left:0}.card-figure{font-size:18pt}body.card-page{margin:0;max-width:none}}
`;
