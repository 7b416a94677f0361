import type { Part } from '../../model/generated/types';
import type { Ref } from '../../model/values';
import type { MapNode, Node } from '../../syntax/node';
import { defineRule } from '../defineRule';
import { inFamily } from '../examples';
import type { FixDraft, RuleContext } from '../ruleContext';
import { PART_RELATIONS, type PartRelation } from '../support/partRelations';
import { takeOut } from '../support/takeOut';

const messages = {
  itself: (what: string, name: string, relation: string) =>
    `The ${what}${name} is said to ${relation} itself; name what is meant, or take it out`,
};

type Context = RuleContext<typeof messages>;

export const namesItself = defineRule({
  id: 'names-itself',
  group: 'family',
  since: '0.1.0',
  severity: 'error',
  fix: 'suggestion',
  doc: {
    what: 'A part that is said to sit on, be fastened by, be behind or seal itself, or an option that needs or excludes itself.',
    why: 'Another part was meant. What was meant is not looked at, so that a step which is out of order passes.',
    wrong: inFamily(
      'parts:\n  wheel: { name: wheel, sits-on: core, fastened-by: [cap-nut], behind: [cover, wheel], renew: on-condition }',
    ),
    right: inFamily(
      'parts:\n  wheel: { name: wheel, sits-on: core, fastened-by: [cap-nut], behind: [cover], renew: on-condition }',
    ),
  },
  messages,
  check: {
    part({ id, value }, ctx) {
      for (const relation of RELATIONS) {
        for (const ref of relation.refs(value)) {
          if (ref.id === id.id)
            report(ref, relation.key, '', [ctx.family?.nameOf(id.id) ?? id.id, relation.say], value.node, ctx);
        }
      }
    },
    family(family, ctx) {
      for (const { id, value } of family.value.options ?? []) {
        const name = value.name?.text ?? id.id;
        for (const [key, say] of [
          ['needs', 'need'],
          ['excludes', 'exclude'],
        ] as const) {
          for (const ref of value[key] ?? []) {
            if (ref.id === id.id) report(ref, key, 'option ', [name, say], value.node, ctx);
          }
        }
      }
    },
  },
});

const INSTEAD: PartRelation = {
  key: 'instead-of',
  say: 'take the place of',
  refs: (part: Part) => part.insteadOf ?? [],
};
const RELATIONS: readonly PartRelation[] = [...PART_RELATIONS, INSTEAD];

function report(ref: Ref, key: string, what: string, said: readonly [string, string], owner: Node, ctx: Context): void {
  const [name, say] = said;
  ctx.report(ref.range, 'itself', [what, name, say], {
    about: [ref.id],
    fixes: (): readonly FixDraft[] => (owner.kind === 'map' ? takeOut(ctx.document, owner as MapNode, key, ref) : []),
  });
}
