// The samples that the scenarios open, and the words that they look for: the one place to change when either changes.

export const expected = {
  faulty: {
    file: 'faulty/torque-without-a-unit.procedure.yaml',
    severity: 'error',
    message: 'The torque 5 ± 0.5 has no unit',
    verb: 'tighten',
    fix: 'Write N·m',
    // Shown text has no-break spaces, which `\s` matches and a typed space does not.
    mended: /torque:\s5\s±\s0\.5\sN·m/,
  },
  sound: {
    file: 'procedures/v4-major.procedure.yaml',
    torque: '5.1 ± 0.3 N·m',
    build: 'V4-20',
    buildId: 'v4-20',
    // The caret is put into one step, and another one is clicked on the sheet.
    caretIn: { step: 'fit-compressor-nut', title: 'Fit the compressor nut' },
    clicked: { step: 'receive-unit', title: 'Record the unit as received' },
    // Rows of the hover over the torque of a step, with plain and no-break spaces alike.
    worked: { step: 'fit-compressor-nut', rows: [/Stated\s*5\.1\s±\s0\.3\sN·m/, /within the band/, /lbf·in/] },
    // The cell that the keys reach on the walk, two rows down and one step on from the first, and where it comes from.
    walked: { part: 'oil inlet fitting', step: 'look-over', title: 'Look over the closed unit' },
    // Where the command puts the file, from the folder that is open, and whether it asks first.
    pdf: 'procedures/v4-major.pdf',
    asksForPath: true,
  },
  failing: {
    file: 'faulty/thread-hand-missing.procedure.yaml',
    passing: '1 of 2 builds pass',
    build: 'W1R',
    caret: /^Ln 34, Col \d+ \(9 selected\)/,
  },
  empty: {
    file: 'procedures/empty.procedure.yaml',
    tab: 'empty.procedure.yaml',
    offered: 'A whole procedure to begin with',
    line: /prepared-by:\sName/,
  },
  begun: {
    family: 'ostrel-v4',
    id: 'OP-900 größer',
    title: 'Strip of the V4: "first look"',
    file: 'procedures/op 900 größer.procedure.yaml',
    tab: 'op 900 größer',
    passing: /All \d+ builds pass/,
    lines: [
      'procedure: OP-900 größer',
      'title: "Strip of the V4: \\"first look\\""',
      'family: ../families/ostrel-v4.family.yaml',
    ],
  },
  // What is typed into the faulty sample once it is mended.
  writing: {
    completion: {
      list: 'with: [torque-wrench-10, socket-10]',
      typed: ', crow',
      tool: 'crowfoot-8',
      listed: /^tools:.*\bcrowfoot-8\b/,
    },
    rename: {
      line: 'with: dial-gauge',
      to: 'clock-gauge',
      here: /^tools:.*\bclock-gauge\b/,
      elsewhere: 'faulty/wexley.stores.yaml',
      there: /^ {2}clock-gauge: /m,
    },
    format: { line: 'starts: assembled', untidy: /^starts:\s{4}assembled$/, tidy: /^starts:\sassembled$/ },
  },
};
