import type { OptionFact, SoundFacts } from './buildFacts';
import type { BuildVariables, OptionNodes } from './buildVariables';
import { ALWAYS, type DecisionDiagram, type DiagramNode, NEVER } from './decisionDiagram';

/**
 * Which builds exist: what the family allows of the unit as received and of the finished unit, and how the work leads
 * from one to the other. The rules of the last options are joined first, as they lie at the bottom of the diagram.
 */
export function existingBuilds(diagram: DecisionDiagram, facts: SoundFacts, variables: BuildVariables): DiagramNode {
  let existing = ALWAYS;
  for (const id of [...variables.optionOrder].reverse()) {
    const option = facts.options.get(id);
    if (option === undefined) continue;
    existing = diagram.and(optionRules(diagram, option, facts, variables), existing);
  }
  return existing;
}

function optionRules(
  diagram: DecisionDiagram,
  option: OptionFact,
  facts: SoundFacts,
  variables: BuildVariables,
): DiagramNode {
  const own = nodesOf(variables, option.id);
  const { variants } = option;
  const allowed =
    variants === 'every' ? ALWAYS : diagram.any(variants.map((id) => variables.variants.get(id) ?? NEVER));
  const possible = option.impossible ? NEVER : allowed;
  return diagram.all([
    unitRules(diagram, option, possible, variables, 'finished'),
    unitRules(diagram, option, possible, variables, 'arrives'),
    onlyAddedWhereAllowed(diagram, option, own),
    staysUnlessReplaced(diagram, option, own, facts, variables),
  ]);
}

/** `variants`, `needs` and `excludes` say what fits together, so they hold for any unit: received or finished. */
function unitRules(
  diagram: DecisionDiagram,
  option: OptionFact,
  possible: DiagramNode,
  variables: BuildVariables,
  unit: keyof OptionNodes,
): DiagramNode {
  const needed = option.needs.map((id) => nodesOf(variables, id)[unit]);
  const excluded = [...option.excludes].map((id) => diagram.not(nodesOf(variables, id)[unit]));
  const demands = diagram.all([possible, ...needed, ...excluded]);
  return diagram.or(diagram.not(nodesOf(variables, option.id)[unit]), demands);
}

function onlyAddedWhereAllowed(diagram: DecisionDiagram, option: OptionFact, own: OptionNodes): DiagramNode {
  return option.mayBeAdded ? ALWAYS : diagram.or(diagram.not(own.finished), own.arrives);
}

/**
 * A rebuild puts back what it took off. Only an option that the work newly fits, and that excludes this one, takes its
 * place for good. What needed the replaced option is not taken off by that: such a build does not exist unless it is
 * excluded too, since nobody wrote down what should become of it.
 */
function staysUnlessReplaced(
  diagram: DecisionDiagram,
  option: OptionFact,
  own: OptionNodes,
  facts: SoundFacts,
  variables: BuildVariables,
): DiagramNode {
  const replacing: DiagramNode[] = [];
  for (const id of option.excludes) {
    if (facts.options.get(id)?.mayBeAdded !== true) continue;
    const { finished, arrives } = nodesOf(variables, id);
    replacing.push(diagram.minus(finished, arrives));
  }
  return diagram.any([diagram.not(own.arrives), own.finished, ...replacing]);
}

function nodesOf(variables: BuildVariables, id: string): OptionNodes {
  return variables.options.get(id) ?? { finished: NEVER, arrives: NEVER };
}
