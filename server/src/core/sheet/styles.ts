import { blockStyles } from './blockStyles';
import { formStyles } from './formStyles';
import type { Sheet } from './sheet';

/**
 * The look of the HTML sheet: a quiet engineering sheet in ink on paper. Colour only repeats what shape and words
 * already say. In an editor's webview its theme variables count; elsewhere light or dark follows the reader's wish.
 */
const themes = `
:root { color-scheme: light dark;
  --ink: var(--vscode-editor-foreground, #16191d); --paper: var(--vscode-editor-background, #ffffff);
  --faint: color-mix(in srgb, var(--ink) 80%, var(--paper)); --line: color-mix(in srgb, var(--ink) 30%, var(--paper));
  --strong-line: var(--vscode-contrastBorder, color-mix(in srgb, var(--ink) 72%, var(--paper)));
  --wash: color-mix(in srgb, var(--ink) 6%, var(--paper)); --link: var(--vscode-textLink-foreground, #0b4f9e);
  --danger: #c8102e; --on-danger: #ffffff; --warning: #ff8200; --on-warning: #000000;
  --caution: #ffd100; --on-caution: #000000; --notice: #1a4f8b; --on-notice: #ffffff; }
@media (prefers-color-scheme: dark) { :root { --ink: var(--vscode-editor-foreground, #e7e9ec);
  --paper: var(--vscode-editor-background, #17191c); --link: var(--vscode-textLink-foreground, #8ec2ff); } }
@media (prefers-contrast: more) { :root { --faint: var(--ink); --line: var(--ink); --strong-line: var(--ink); --wash: var(--paper); } }
.vscode-high-contrast, .vscode-high-contrast-light { --faint: var(--ink); --line: var(--strong-line); --wash: var(--paper); }
`;

const page = `
*, *::before, *::after { box-sizing: border-box; }
body { margin: 0 auto; padding: 1.5rem 1.25rem 3rem; max-width: 54rem; background: var(--paper); color: var(--ink);
  font: 400 1rem/1.5 "Noto Sans", system-ui, "Segoe UI", sans-serif; overflow-wrap: break-word; }
main { margin-top: 1rem; }
p { margin: 0 0 .4rem; } a { color: var(--link); } code { font-size: .85em; color: var(--faint); }
h1 { font-size: 1.8rem; line-height: 1.2; margin: 0 0 .9rem; }
h2 { font-size: 1.2rem; line-height: 1.25; margin: 2.2rem 0 .7rem; padding-bottom: .25rem; border-bottom: 2px solid var(--strong-line); }
h3 { display: flex; flex-wrap: wrap; align-items: baseline; gap: .2rem .75rem; font-size: 1.15rem; line-height: 1.3; margin: 0 0 .6rem; }
.document-kind, .phase-number, figcaption { color: var(--faint); } .document-kind { margin: 0; }
.phase-number { font-weight: 400; }
.band { position: sticky; top: 0; z-index: 1; margin: 0 0 1rem; padding: .45rem .8rem; text-align: center; letter-spacing: .04em;
  background: var(--ink); color: var(--paper); border: 2px solid var(--strong-line); }
.band.framed { background: var(--paper); color: var(--ink); }
.facts { display: grid; grid-template-columns: repeat(auto-fit, minmax(11rem, 1fr)); margin: 0; border: 1px solid var(--line); }
.facts div { padding: .35rem .7rem; box-shadow: 0 0 0 .5px var(--line); } .facts div:first-child { grid-column: 1 / -1; }
.facts div:first-child dd { font-size: 1.15rem; font-weight: 700; }
dt { font-size: .8rem; color: var(--faint); } dd { margin: 0; }
.safety { border: 2px solid var(--strong-line); padding: .1rem 1rem .5rem; margin-top: 1.2rem; }
.safety h2 { border: 0; margin: .5rem 0 .2rem; padding: 0; font-size: 1rem; }
footer { margin-top: 2.5rem; padding-top: .5rem; border-top: 1px solid var(--line); color: var(--faint); }
.table-frame { overflow-x: auto; }
table { border-collapse: collapse; width: 100%; } thead th { background: var(--wash); font-size: .85rem; }
th, td { border: 1px solid var(--line); padding: .4rem .6rem; text-align: start; vertical-align: top; }
.tool-list td:first-child, .consumable-list td:first-child, .kit-list td:first-child { width: 4.5rem; text-align: center; }
.records td:last-child { min-width: 7.5rem; } .consumable-list td:nth-child(3) { min-width: 10rem; } .torques td > p { white-space: nowrap; } .torques .condition { white-space: normal; } td > p { margin: 0; }
`;

const steps = `
.step.changed { border-inline-start: 5px solid var(--ink); padding-inline-start: .8rem; margin-inline-start: -1.1rem; }
.phase > h2 { background: var(--ink); color: var(--paper); border: 0; padding: .35rem .8rem; margin-bottom: .6rem; } .phase > h2 .phase-number { color: inherit; }
.step { padding: .6rem 0; scroll-margin-top: 3.5rem; } .step > h3 { background: var(--wash); border-top: 2px solid var(--strong-line); padding: .25rem .6rem; margin-bottom: .2rem; }
.step-number { min-width: 2rem; font-size: 1.5rem; font-weight: 700; } .step-title { flex: 1 1 14rem; }
.tag { font-size: .8rem; border: 1px solid var(--strong-line); padding: 0 .5rem; font-weight: 700; }
.condition { display: flex; align-items: center; gap: .6rem; }
.instructions { list-style: none; margin: 0; padding: 0; } .instructions > li { padding: .4rem 0; } .instructions > li + li, .instructions + .instructions > li { border-top: 1px solid var(--line); }
.act { display: grid; grid-template-columns: 3.2rem 1fr auto; gap: 0 .2rem; align-items: start; }
.act p { margin: 0; min-width: 0; } .act-number { color: var(--faint); font-variant-numeric: tabular-nums; }
li > .torque, .reading, li > .choices, .accept, p.record, .note, .if-not, figure, .instructions > li > .condition { margin-inline-start: 3.4rem; }
.tick { display: inline-block; flex: none; width: 1.35rem; height: 1.35rem; border: 2px solid var(--ink); vertical-align: middle; }
.blank { display: inline-block; min-width: 7rem; border-bottom: 1.5px solid var(--ink); height: 1.6em; margin-inline: .4rem; text-align: end; color: var(--faint); }
.blank.long { min-width: 14rem; } p.record { display: flex; align-items: flex-end; } p.record .blank { flex: 1; } .part, .tool, .consumable { font-weight: 600; } .quantity, .unbroken { white-space: nowrap; }
.panel { display: flex; border: 2px solid var(--ink); margin: .5rem 0; break-inside: avoid; } .panel.danger { border-width: 4px; } .panel.warning { border-width: 3px; } .panel.notice { border-width: 1px; }
.signal { display: flex; align-items: center; gap: .5rem; flex: 0 0 auto; min-width: 8.6rem; white-space: nowrap; margin: 0; padding: .4rem .7rem; letter-spacing: .03em; border-inline-end: 2px solid var(--ink); }
.danger .signal { background: var(--danger); color: var(--on-danger); } .warning .signal { background: var(--warning); color: var(--on-warning); }
.caution .signal { background: var(--caution); color: var(--on-caution); } .notice .signal { background: var(--notice); color: var(--on-notice); font-style: italic; }
.signal .symbol svg { display: block; width: 1.5rem; } .panel-text { padding: .45rem .8rem .1rem; flex: 1; min-width: 0; align-self: center; }
@media (max-width: 32rem) { .panel { flex-direction: column; } .signal { border-inline-end: 0; border-bottom: 2px solid var(--ink); }
  .hold-fields, .sign-field { flex-wrap: wrap; white-space: normal; } .stamp { flex: 1 1 100%; } .blank.long, .sign-field .blank { min-width: min(100%, 7rem); } .sign-field { min-width: 0; }
  li > .torque, .reading, li > .choices, .accept, p.record, .note, .if-not, figure, .instructions > li > .condition, li > .turning, .times { margin-inline-start: 0; } }
.torque { border: 2px solid var(--strong-line); border-inline-start-width: 8px; padding: .5rem .9rem; margin-block: .4rem .6rem; break-inside: avoid; }
.fastener { margin: 0; font-size: .9rem; color: var(--faint); }
.value { margin: .1rem 0; display: flex; flex-wrap: wrap; align-items: baseline; gap: 0 .8rem; } .value strong { font-size: 1.9rem; line-height: 1.2; }
.pass { margin: 0; display: flex; gap: 0 .8rem; align-items: baseline; } .pass strong { font-size: 1.35rem; } .pass-name { min-width: 3.6rem; }
.setting { display: flex; flex-wrap: wrap; align-items: center; gap: 0 2rem; } .values { flex: 1 1 16rem; } .setting .turn { flex: 0 1 18rem; }
.secondary { font-size: 1.05rem; } .turn { display: flex; align-items: center; gap: .55rem; font-size: 1.1rem; }
.turn .symbol svg { display: block; width: 2rem; } .torques { font-size: .93rem; } .torques .blank { min-width: 5rem; margin: 0; } td .condition { align-items: flex-start; }
.branch { border-top: 1px solid var(--line); padding-top: .5rem; margin-top: .4rem; } .with { margin-top: .4rem; }
.reading { margin-block: .3rem .7rem; break-inside: avoid; overflow-x: auto; } .reading table { width: auto; min-width: 60%; }
.reading thead th:first-child { font-size: 1.1rem; } .reading tbody th { font-weight: 400; vertical-align: middle; }
.to-fill { min-width: 7.5rem; height: 2.6rem; text-align: end; vertical-align: bottom; color: var(--faint); }
.choices, .ticks { list-style: none; padding: 0; display: flex; flex-wrap: wrap; gap: .5rem 1.6rem; } .choices li, .ticks li { display: flex; gap: .6rem; align-items: center; }
.choices { margin: .2rem 0 .4rem; } .field .choices { margin: 0; } .ticks { flex-direction: column; } .if-not { border-inline-start: 4px double var(--strong-line); padding-inline-start: .8rem; }
.hold-point { margin: .6rem 0; break-inside: avoid; }
.sign-fields, .fields { display: flex; flex-wrap: wrap; gap: .4rem 1.5rem; margin: 0; } .field { display: flex; align-items: center; gap: .6rem; }
.loose-ends { border: 2px dashed var(--strong-line); padding: .6rem .9rem; margin: .8rem 0; break-inside: avoid; } .loose-list td:nth-child(3), .temporary-list td:nth-child(2) { white-space: nowrap; }
.boxes, .bench { display: flex; flex-wrap: wrap; gap: .5rem; align-items: center; } .bench { gap: .2rem 1.4rem; padding-block: .2rem; } .bench > :first-child { flex: 1 1 12rem; } .bench .condition { flex-basis: 100%; margin: 0; }
.fate-list td:first-child { width: min(11rem, 30%); } .choice { display: flex; gap: .5rem; align-items: center; }
.notes-line { height: 2.2rem; border-bottom: 1px solid var(--line); }
figure { margin-block: .5rem; break-inside: avoid; } figure img { max-width: 100%; max-height: 22rem; background: #ffffff; padding: .5rem; border: 1px solid var(--line); }
.findings { list-style: none; padding: 0; margin: 0 0 .6rem; } .findings li { border: 1px dashed var(--strong-line); padding: .3rem .7rem; margin-bottom: .3rem; }
.findings .error { border-style: solid; border-inline-start-width: 6px; } .findings code { margin-inline-start: .6rem; }
.preview .step[data-source-uri] h3 { cursor: pointer; } .step.at-cursor { box-shadow: -.6rem 0 0 -.35rem var(--ink); }
`;

const print = `
@media print { :root { --ink: #000; --paper: #fff; --faint: #333; --line: #888; --strong-line: #000; --wash: #f1f1f1; --link: #000; color-scheme: light; }
  body { max-width: none; padding: 0; font-size: 10.5pt; } .findings { display: none; } .band { position: static; }
  .phase > h2, .step > h3, .signal, .band, thead th { print-color-adjust: exact; -webkit-print-color-adjust: exact; }
  .value strong { font-size: 18pt; } h2, h3 { break-after: avoid; } .instructions > li { break-inside: avoid; } thead { display: table-header-group; }
  tr { break-inside: avoid; } .panel { break-after: avoid; } .hold-point { break-before: avoid; } table { font-size: 9.5pt; } a { text-decoration: none; } }
@media (forced-colors: active) { .signal, .band, figure img { forced-color-adjust: none; } }
`;

/** The paper, with the side that is bound kept clear for punching: on the left, or inside where both sides are printed. */
export function pageRules({ paper, sides }: Pick<Sheet, 'paper' | 'sides'>): string {
  const size = `size: ${paper === 'a4' ? 'A4' : 'letter'};`;
  const bound = '@page { margin: 15mm 13mm 15mm 22mm; }';
  const facing = '@page :right { margin: 15mm 13mm 15mm 22mm; } @page :left { margin: 15mm 22mm 15mm 13mm; }';
  return `@page { ${size} } ${sides === 'double' ? facing : bound}\n`;
}

export const sheetStyles = themes + page + steps + blockStyles + formStyles + print;
