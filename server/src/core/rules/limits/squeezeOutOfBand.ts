import { lengthText } from '../../workings/limitText';
import { type SealCase, sealCase, squeezeVerdict } from '../../workings/sealCase';
import { bandText, sealWorkingsOf, shares } from '../../workings/sealWorking';
import { defineRule } from '../defineRule';
import { inFamily } from '../examples';
import { besideSqueeze, sealRelated } from '../support/sealFindings';

const family = (depth: string): string =>
  `parts:
  cover-seal:
    name: cover seal
    kind: o-ring
    sits-on: core
    seals: cover
    behind: [cover]
    renew: always
    section: 1.78 ± 0.08 mm
    groove: { depth: ${depth}, width: 2.6 mm, motion: static }`;

interface Words {
  readonly name: string;
  readonly squeeze: string;
  readonly band: string;
  /** Stretch and fill in words; '' where neither is known. */
  readonly beside: string;
}

export const squeezeOutOfBand = defineRule({
  id: 'squeeze-out-of-band',
  group: 'limits',
  since: '0.1.0',
  severity: 'warning',
  fix: 'none',
  doc: {
    what: 'An O-ring that its groove squeezes less or more than is recommended, at the worst of both tolerances: 10 to 40 % where nothing moves, at most 30 % where it does. Where the family does not say whether the joint moves, it is taken to be static.',
    why: 'With too little squeeze the joint leaks as soon as it is cold; with too much the ring is cut while it is fitted, or sets and leaks later.',
    wrong: inFamily(family('1.60..1.75 mm')),
    right: inFamily(family('1.27..1.40 mm')),
  },
  messages: {
    open: (name: string, gap: string) =>
      `The ${name} need not touch: its thinnest section is ${gap} less than the deepest groove; mend the section or the depth`,
    little: ({ name, squeeze, band, beside }: Words) =>
      `The ${name} is squeezed by ${squeeze}, and ${band} is recommended${beside}; the groove is too deep for the section`,
    much: ({ name, squeeze, band, beside }: Words) =>
      `The ${name} is squeezed by ${squeeze}, and ${band} is recommended${beside}; the groove is too shallow for the section`,
  },
  check: {
    part({ id, value }, ctx) {
      const { family } = ctx;
      const seal = value.groove === undefined ? undefined : sealCase(value);
      const verdict = seal && squeezeVerdict(seal);
      if (family === undefined || seal?.squeeze === undefined || verdict === undefined || verdict === 'inside') return;
      const range = value.groove?.depth?.node ?? id.node;
      const details = { about: [id.id], related: sealRelated(value), working: () => sealWorkingsOf(family, id.id) };
      const name = family.nameOf(id.id);
      if (verdict === 'open') ctx.report(range, 'open', [name, lengthText(-seal.squeeze.least, seal.unit)], details);
      else ctx.report(range, verdict, [wordsOf(name, seal, seal.squeeze)], details);
    },
  },
});

function wordsOf(name: string, seal: SealCase, squeeze: NonNullable<SealCase['squeeze']>): Words {
  const { leastPercent, greatestPercent } = squeeze;
  return { name, squeeze: shares(leastPercent, greatestPercent), band: bandText(seal), beside: besideSqueeze(seal) };
}
