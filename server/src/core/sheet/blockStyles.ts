/** The look of the blocks within a step. */
export const blockStyles = `
li > .turning, .times, .choices.renewal { margin-inline-start: 3.4rem; } .turning { margin-block: .2rem .5rem; }
.turn-line { display: flex; flex-wrap: wrap; align-items: center; gap: .1rem 1.4rem; padding-block: .15rem; } .turn-line p { margin: 0; } .turn-line .condition, .turned { flex: 1 1 13rem; } .turn-line .turn { flex: 0 1 auto; } .turn-line .condition + .turn, .turned + .turn { flex-basis: 20rem; }
li > .turning .turn { font-size: 1rem; } li > .turning .symbol svg { width: 1.5rem; }
.torque > .turning { border-top: 1px solid var(--line); } .torque > .turning .turn-line + .turn-line { border-top: 1px solid var(--line); }
.left-hand { display: inline-block; background: var(--ink); color: var(--paper); padding: .05rem .5rem; white-space: nowrap; letter-spacing: .03em; }
.piece-grid { display: flex; flex-wrap: wrap; align-items: center; gap: .4rem 1.4rem; margin-block: .5rem; } .piece-grid table { width: auto; } .piece-grid table + table { margin-top: .5rem; }
.piece-grid th, .piece-grid td { padding: .25rem .4rem; text-align: center; vertical-align: middle; min-width: 2.4rem; } .piece-grid th:first-child { text-align: start; font-weight: 400; }
.turn-number { display: inline-block; min-width: 1.6em; border-radius: 1em; background: var(--ink); color: var(--paper); line-height: 1.6; }
.order-picture { margin: 0; text-align: center; } .order-picture img { width: 8.5rem; border: 0; padding: 0; } .order-picture figcaption { font-size: .75rem; max-width: 16rem; }
.reading .round { width: 2.2rem; text-align: center; } .sum .sign { border: 0; text-align: center; vertical-align: middle; font-size: 1.2rem; font-weight: 700; padding-inline: .2rem; } .sum thead td.round { border: 0; } .sum thead th p { font-size: 1.05rem; }
.sum .stated { vertical-align: middle; text-align: center; } .times { display: flex; flex-wrap: wrap; gap: .4rem 1.5rem; align-items: flex-end; }
.renewal { border-inline-start: 3px solid var(--strong-line); padding-inline-start: .8rem; } .renewed-part { flex-basis: 100%; } .initials .blank { min-width: 4rem; } .choices li:has(> .blank) { align-items: flex-end; gap: 0; }
.hold-point { border: 3px solid var(--ink); padding: 0; } .hold-bar { background: var(--ink); color: var(--paper); padding: .45rem .9rem; margin: 0; font-size: 1.15rem; } .hold-bar strong { letter-spacing: .06em; }
.hold-fields { display: flex; gap: 1rem; padding: .7rem .9rem; } .hold-fields .sign-fields { flex: 1; row-gap: .8rem; } .sign-field { display: flex; align-items: flex-end; flex: 1 1 14rem; white-space: nowrap; } .sign-field .blank { flex: 1; }
.stamp { flex: 0 0 9rem; min-height: 6rem; border: 1.5px dashed var(--strong-line); padding: .2rem .5rem; margin: 0; color: var(--faint); font-size: .85rem; }
@media print { .hold-bar, .left-hand, .turn-number { print-color-adjust: exact; -webkit-print-color-adjust: exact; } }
`;
