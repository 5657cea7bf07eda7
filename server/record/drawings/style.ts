/** The look of the drawings, by custom properties that the page around them sets for light, dark and paper. */

/**
 * The page sets `--ink --quiet --faint --paper --wash --good --bad --accent`; in the editor's panel they are the
 * theme's own colours. No meaning rests on colour alone: each has a shape or a pattern beside it.
 */
export const DRAWING_STYLE = `
.drawing{display:block;max-width:100%;height:auto;font-family:inherit;fill:none;stroke-linecap:butt;overflow:visible}
.drawing text{fill:var(--ink);stroke:none;font-variant-numeric:tabular-nums;white-space:pre}
.drawing text.quiet{fill:var(--quiet)}
.drawing text.strong{font-weight:650}
.drawing text.bad{fill:var(--bad);stroke:none;font-weight:650}
.drawing text.good{fill:var(--good);stroke:none}
.drawing text.halo{paint-order:stroke;stroke:var(--paper);stroke-width:4px;stroke-linejoin:round}
.drawing .line{stroke:var(--ink);stroke-width:1}
.drawing .firm{stroke:var(--ink);stroke-width:1.75}
.drawing .hair{stroke:var(--quiet);stroke-width:.75}
.drawing .faint{stroke:var(--faint);stroke-width:1}
.drawing .leg{stroke:var(--faint);stroke-width:3}
.drawing .leader{stroke:var(--quiet);stroke-width:.75}
.drawing .dashed{stroke:var(--quiet);stroke-width:1;stroke-dasharray:4 3}
.drawing .dotted{stroke:var(--quiet);stroke-width:1.5;stroke-dasharray:.1 4;stroke-linecap:round}
.drawing .tape{stroke:var(--accent);stroke-width:2.25}
.drawing .dimension{stroke:var(--ink);stroke-width:1}
.drawing .bad{stroke:var(--bad);stroke-width:1.75}
.drawing .bad-hair{stroke:var(--bad);stroke-width:1}
.drawing .good{stroke:var(--good);stroke-width:1.75}
.drawing .good-hair{stroke:var(--good);stroke-width:1}
.drawing .fill-ink{fill:var(--ink)}
.drawing .fill-paper{fill:var(--paper)}
.drawing .fill-wash{fill:var(--wash)}
.drawing .fill-good{fill:var(--good)}
.drawing .fill-bad{fill:var(--bad)}
.drawing .fill-accent{fill:var(--accent)}
.drawing .part{fill:var(--wash);stroke:var(--ink);stroke-width:1}
.drawing .outline{fill:var(--paper);stroke:var(--ink);stroke-width:1.25}
.drawing .outline-good{fill:var(--paper);stroke:var(--good);stroke-width:1.75}
.drawing .outline-bad{fill:var(--paper);stroke:var(--bad);stroke-width:1.75}
.drawing .ring{fill:var(--paper);stroke:var(--ink);stroke-width:1.5}
.drawing .on-hatch{stroke:var(--paper);stroke-width:1.25}
.drawing .on-fill{stroke:var(--paper);stroke-width:1.75;stroke-linecap:round;stroke-linejoin:round}
.drawing .on-fill.wide{stroke-width:5}
.drawing .thing{cursor:pointer;text-decoration:none}
.drawing .thing:hover text,.drawing .thing:focus text{text-decoration:underline;text-underline-offset:2px}
.drawing .thing:focus{outline:2px solid var(--accent);outline-offset:2px}
.drawing .thing.here text{font-weight:650}
@media print{.drawing .thing{cursor:auto}}
`;
