/**
 * The look of the chart: ink on paper, where the shape of a line says how a part stands and colour only repeats it. In
 * an editor its theme variables count; elsewhere light or dark follows the reader's wish.
 */
const tones = `
.walk { --ink: var(--vscode-editor-foreground, #16191d); --paper: var(--vscode-editor-background, #ffffff);
  --apart: var(--vscode-charts-blue, #0a6d8c); --warm: var(--vscode-charts-orange, #b3541e);
  --error: var(--vscode-editorError-foreground, #c8102e); --warning: var(--vscode-editorWarning-foreground, #96690a);
  --info: var(--vscode-editorInfo-foreground, #1a4f8b); --here: var(--vscode-focusBorder, #0a6d8c);
  --faint: color-mix(in srgb, var(--ink) 80%, var(--paper)); --guide: color-mix(in srgb, var(--ink) 13%, var(--paper));
  --rule: color-mix(in srgb, var(--ink) 34%, var(--paper)); --wash: color-mix(in srgb, var(--ink) 5%, var(--paper)); }
@media (prefers-color-scheme: dark) { .walk { --ink: var(--vscode-editor-foreground, #e7e9ec); --paper: var(--vscode-editor-background, #17191c);
  --apart: var(--vscode-charts-blue, #6ccbe8); --warm: var(--vscode-charts-orange, #f0a36b); --error: var(--vscode-editorError-foreground, #ff7b86);
  --warning: var(--vscode-editorWarning-foreground, #e8c15a); --info: var(--vscode-editorInfo-foreground, #8ec2ff); --here: var(--vscode-focusBorder, #6ccbe8); } }
@media (prefers-contrast: more) { .walk { --faint: var(--ink); --rule: var(--ink); --guide: color-mix(in srgb, var(--ink) 40%, var(--paper)); --wash: var(--paper); } }
.vscode-high-contrast .walk, .vscode-high-contrast-light .walk { --faint: var(--ink); --rule: var(--ink); --wash: var(--paper);
  --guide: color-mix(in srgb, var(--ink) 40%, var(--paper)); --apart: var(--ink); }
@media (forced-colors: active) { .walk { --ink: CanvasText; --paper: Canvas; --apart: CanvasText; --warm: CanvasText; --error: CanvasText;
  --warning: CanvasText; --info: CanvasText; --here: Highlight; --faint: CanvasText;
  --guide: color-mix(in srgb, CanvasText 30%, Canvas); --rule: color-mix(in srgb, CanvasText 65%, Canvas); --wash: Canvas; } }
@media print { .walk { --ink: #000; --paper: #fff; --apart: #000; --warm: #000; --error: #000; --warning: #000; --info: #000; --faint: #333;
  --guide: #ddd; --rule: #888; --wash: #f3f3f3; } }
`;

const drawing = `
.walk { color: var(--ink); background: var(--paper); font: 400 12px/1.4 var(--vscode-font-family, "Noto Sans", system-ui, "Segoe UI", sans-serif); }
.walk text { fill: var(--ink); font-size: 12px; } .walk .leaning, .walk .phase-title { font-size: 11px; }
.walk .number { font-size: 11px; font-weight: 600; text-anchor: middle; font-variant-numeric: tabular-nums; }
.walk .phase rect { fill: var(--wash); stroke: var(--rule); } .walk .phase.even rect { fill: var(--paper); } .walk .phase-title { font-weight: 600; }
.walk .band.odd { fill: var(--wash); } .walk .band.even { fill: none; }
.walk .rule, .walk .guide { fill: none; stroke: var(--guide); stroke-width: 1; } .walk .phase-rule { stroke: var(--rule); }
.walk .elbow { fill: none; stroke: var(--rule); } .walk .temporary text, .walk .edge text { font-style: italic; fill: var(--faint); }
.walk .left-out text { fill: var(--faint); font-style: italic; } .walk .not-on-the-way { fill: url(#walk-blank); }
.walk .blank-line { stroke: var(--guide); stroke-width: 1.5; } .walk .hatch-line { stroke: var(--apart); stroke-width: 1.7; }
.walk .bar { fill: none; stroke: none; } .walk .bar.torqued, .walk .bar.fitted { fill: var(--ink); }
.walk .bar.loose { stroke: var(--ink); stroke-width: 1.5; } .walk .bar.bench { fill: url(#walk-hatch); stroke: var(--apart); }
.walk .bar.off { stroke: var(--apart); stroke-width: 2.6; stroke-linecap: round; stroke-dasharray: 0 6; }
.walk .bar.ready { stroke: var(--apart); stroke-width: 6.5; stroke-dasharray: 1.4 3.6; }
.walk .bar.away, .walk .bar.gone { stroke: var(--apart); stroke-width: 1.8; }
.walk .hot, .walk .cold { fill: none; stroke: var(--warm); stroke-width: 1.4; } .walk .cold { stroke: var(--apart); }
.walk .examined { fill: var(--paper); stroke: var(--ink); stroke-width: 1.7; } .walk .mark { fill: var(--ink); stroke: var(--paper); stroke-width: .6; }
.walk .found { fill: none; stroke-width: 1.6; } .walk .found.error { stroke: var(--error); } .walk .found.warning { stroke: var(--warning); stroke-dasharray: 4 2; }
.walk .found.info { stroke: var(--info); stroke-dasharray: 1.5 2; }
.walk .sign-plate { fill: var(--paper); stroke-width: 1.5; } .walk .sign-stroke { fill: none; stroke-width: 1.8; stroke-linecap: round; }
.walk .error .sign-plate { fill: var(--error); stroke: var(--error); } .walk .error .sign-stroke { stroke: var(--paper); }
.walk .warning .sign-plate, .walk .warning .sign-stroke { stroke: var(--warning); } .walk .info .sign-plate, .walk .info .sign-stroke { stroke: var(--info); }
.walk .hit { fill: transparent; stroke: none; } .walk g[role]:focus { outline: none; }
.walk [data-source-offset] { cursor: pointer; } .walk [data-source-offset]:hover > .hit { stroke: var(--rule); }
.walk g[role]:focus > .hit { stroke: var(--here); stroke-width: 2; } .walk .step-head:focus text { text-decoration: underline; }
.walk .here-step { fill: var(--here); fill-opacity: .13; stroke: var(--here); stroke-width: 1.2; pointer-events: none; }
`;

const page = `
.walk-page { margin: 0; padding: 1rem 1.25rem 2rem; } .walk h1 { font-size: 1.35rem; line-height: 1.25; margin: 0 0 .2rem; } .walk p { margin: 0 0 .6rem; font-size: 13px; }
.walk .assumed { color: var(--faint); }
.walk-frame { display: grid; isolation: isolate; width: fit-content; max-width: 100%; max-height: calc(100vh - 2rem); overflow: auto; border: 1px solid var(--rule); background: var(--paper); }
.walk-frame > * { display: block; background: var(--paper); } .walk-corner { position: sticky; top: 0; left: 0; z-index: 3; box-sizing: border-box; border: solid var(--rule); border-width: 0 1px 1px 0;
  display: flex !important; align-items: flex-end; padding: 0 .5rem .4rem; color: var(--faint); }
.walk-head { position: sticky; top: 0; z-index: 2; box-shadow: 0 1px var(--rule); } .walk-names { position: sticky; left: 0; z-index: 1; box-shadow: 1px 0 var(--rule); }
.walk .legend { list-style: none; display: grid; grid-template-columns: repeat(auto-fill, minmax(19rem, 1fr)); gap: .1rem 1rem; margin: .9rem 0; padding: 0; }
.walk .legend li { display: flex; align-items: center; gap: .6rem; font-size: 12.5px; } .walk .sample { flex: none; }
.walk .findings { padding-inline-start: 1.2rem; font-size: 13px; } .walk details { margin-top: 1rem; font-size: 13px; } .walk summary { font-weight: 600; cursor: pointer; }
.walk dt { font-weight: 600; margin-top: .5rem; } .walk dd { margin: 0 0 0 1rem; }
@page { size: A3 landscape; margin: 10mm; }
@media print { .walk-frame { width: 100%; max-height: none; overflow: visible; } .walk-frame > * { position: static; width: 100%; height: auto; } .walk-page { padding: 0; } .walk-corner { font-size: 0; } }
`;

/** For the drawing alone. */
export const drawingStyles = tones + drawing;
/** For a page around the drawing. */
export const chartPageStyles = tones + drawing + page;
