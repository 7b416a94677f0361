/** Beside the look of the sheet itself: what stands around the steps. Colour only repeats what words and lines say. */
export const reviewStyles = `
body { max-width: 90rem; }
.sum { font-size: 1.1rem; }
.changes ul { list-style: none; margin: 0; padding: 0; }
.changes li { border-inline-start: 4px solid var(--line); padding: .35rem .9rem; margin-bottom: .5rem; overflow-wrap: anywhere; }
.changes.hurt li { border-inline-start: 8px solid var(--ink); background: var(--wash); }
.changes code { display: block; } .places { display: flex; flex-wrap: wrap; gap: .3rem .6rem; margin: .2rem 0; }
.places button { font: inherit; font-size: .85rem; color: var(--link); background: none; border: 1px solid var(--strong-line); padding: .1rem .5rem; cursor: pointer; }
 .changes .reach { margin: 0; color: var(--faint); }
.sides { display: grid; grid-template-columns: 1fr 1fr; gap: 0 1.5rem; }
.heads { font-weight: 700; border-bottom: 1px solid var(--line); } .heads p { margin: 0; }
.side { min-width: 0; } .side.after { border-inline-start: 6px solid var(--strong-line); padding-inline-start: 1rem; }
.side .step { border-top: 0; } .none { color: var(--faint); padding-top: 1rem; }
article { border-bottom: 1px solid var(--line); padding: .6rem 0; }
.what { margin: 0; padding-inline-start: 1.2rem; color: var(--ink); }
@media (max-width: 60rem) { .sides { grid-template-columns: 1fr; } .side.after { margin-top: .5rem; } }
`;
