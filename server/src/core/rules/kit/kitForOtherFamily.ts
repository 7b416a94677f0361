import { defineRule } from '../defineRule';
import { inStep, withFiles } from '../examples';
import { isForOther, pathOfKit } from '../support/kitSupply';

const OTHER_FAMILY = `witnessmark: 1
family: pellow-k2
name: Pellow K2
base: core
parts:
  core: { name: core }
  cover-seal: { name: cover seal, sits-on: core, renew: always }
`;
const OTHER_KIT = `witnessmark: 1
kit: K-PK2
family: ../families/pellow-k2.family.yaml
lines:
  - { item: 10, part: cover-seal, number: PK-204, quantity: 1 }
`;

export const kitForOtherFamily = defineRule({
  id: 'kit-for-other-family',
  group: 'kit',
  since: '0.1.0',
  severity: 'error',
  fix: 'none',
  doc: {
    what: 'The procedure names a kit that is for another family.',
    why: 'Parts that look alike and do not fit are laid out, and the right ones are missing.',
    wrong: withFiles(inStep('- install: cover-seal'), {
      'families/pellow-k2.family.yaml': OTHER_FAMILY,
      'kits/pellow-k1.kit.yaml': OTHER_KIT,
    }),
    right: inStep('- install: cover-seal'),
  },
  messages: {
    other: (kit: string, theirs: string, ours: string) =>
      `The kit ${kit} is for the family ${theirs}, but this procedure is for ${ours}; name a kit of ${ours}`,
  },
  check: {
    procedure(procedure, ctx) {
      for (const kit of procedure.kits) {
        const path = isForOther(procedure, kit) ? pathOfKit(procedure, kit) : undefined;
        if (path === undefined || kit.family === undefined || procedure.family === undefined) continue;
        const theirs = kit.family.value.family?.id ?? kit.family.document.uri;
        const ours = procedure.family.value.family?.id ?? procedure.family.document.uri;
        ctx.report(path.node, 'other', [kit.value.kit?.text ?? path.path, theirs, ours], {
          about: [theirs],
          related: [
            {
              range: kit.value.family?.node ?? kit.value.node,
              document: kit.document,
              message: 'The family of the kit',
            },
          ],
        });
      }
    },
  },
});
