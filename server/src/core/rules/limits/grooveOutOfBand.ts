import { greatestFill, greatestStretch } from '../../standards/oRings';
import { isOverfilled, isOverstretched, sealCase } from '../../workings/sealCase';
import { sealWorkingsOf, shares } from '../../workings/sealWorking';
import { defineRule } from '../defineRule';
import { inFamily } from '../examples';
import { sealRelated } from '../support/sealFindings';

const family = (width: string): string =>
  `parts:
  cover-seal:
    name: cover seal
    kind: o-ring
    sits-on: core
    seals: cover
    behind: [cover]
    renew: always
    section: 1.78 ± 0.08 mm
    inside-diameter: 66.40 mm
    groove: { depth: 1.27..1.40 mm, width: ${width}, diameter: 67.2 mm, motion: static }`;

export const grooveOutOfBand = defineRule({
  id: 'groove-out-of-band',
  group: 'limits',
  since: '0.1.0',
  severity: 'warning',
  fix: 'none',
  doc: {
    what: 'An O-ring that is stretched by more than 5 % in its groove, or that fills more than 85 % of it, at the worst of all tolerances. A groove around the ring, as in a bore, stretches nothing.',
    why: 'A stretched ring thins and cracks. One that has no room swells in the oil, lifts the joint or is cut at the edge.',
    wrong: inFamily(family('2.0 mm')),
    right: inFamily(family('2.6 mm')),
  },
  messages: {
    stretch: (name: string, stretch: string) =>
      `The ${name} is stretched by ${stretch} in its groove, and at most ${greatestStretch.inPlace} % is recommended; it is the wrong size, or the diameter of the groove is wrong`,
    fill: (name: string, fill: string) =>
      `The ${name} fills ${fill} of its groove, and at most ${greatestFill} % is recommended; mend the width or the depth of the groove, or the section`,
  },
  check: {
    part({ id, value }, ctx) {
      const { family: view } = ctx;
      const seal = value.groove === undefined ? undefined : sealCase(value);
      if (view === undefined || seal === undefined) return;
      const name = view.nameOf(id.id);
      const details = { about: [id.id], related: sealRelated(value), working: () => sealWorkingsOf(view, id.id) };
      const { stretch, fill } = seal;
      const { diameter, width } = value.groove ?? {};
      if (diameter !== undefined && stretch !== undefined && isOverstretched(seal)) {
        ctx.report(diameter.node, 'stretch', [name, shares(stretch.least, stretch.greatest)], details);
      }
      if (width !== undefined && fill !== undefined && isOverfilled(seal)) {
        ctx.report(width.node, 'fill', [name, shares(fill.least, fill.greatest)], details);
      }
    },
  },
});
