/** The look of the forms around the work: boxes with room for a hand in a glove, lines to write on, few rules. */
export const formStyles = `
.form-heading { margin: 1.4rem 0 .5rem; font-size: 1.05rem; }
.form-boxes { margin: .6rem 0 1rem; border: 1px solid var(--line); } .form-row { display: flex; flex-wrap: wrap; }
.form-box { flex: 1 1 10rem; min-height: 3.6rem; padding: .3rem .6rem; box-shadow: 0 0 0 .5px var(--line); } .form-box.share-2 { flex: 2 1 20rem; } .form-box p { margin: 0; }
.box-label { font-size: .8rem; color: var(--faint); } .box-unit { text-align: end; color: var(--faint); margin-top: .6rem; }
.form-lines { margin: .8rem 0; } .form-lines > p { margin: 0; font-weight: 600; } .form-line { height: 2rem; border-bottom: 1.5px solid var(--ink); }
.form-table td > p { margin: 0; } .form-table.tall td { height: 3.2rem; } .form-table .choices { margin: 0; }
.form-table .to-write { min-width: 6rem; } .form-table .to-tick { text-align: center; vertical-align: middle; }
.col-tick { width: 4.2rem; } .col-step { width: 3.6rem; } .blank-line { display: flex; align-items: flex-end; gap: .4rem; color: var(--faint); font-size: .9rem; }
.blank-line .blank { flex: 1; min-width: 3rem; margin: 0; }
@media print { .page-own, .page-start { break-before: page; } .page-own { break-after: page; } .form-heading { break-after: avoid; } .form-boxes, .form-lines { break-inside: avoid; } }
`;
