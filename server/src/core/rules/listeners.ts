import type { Rule, Visitors } from './defineRule';
import type { RuleContext } from './ruleContext';

export type VisitorName = keyof Visitors<never>;

export interface Listener {
  readonly rule: Rule;
  readonly visit: (value: unknown, context: RuleContext) => void;
}

/** Who wants to see what. */
export type Listeners = Readonly<Partial<Record<VisitorName, readonly Listener[]>>>;

/** The listeners of a list of rules, and of those among them that look at more than a step. */
export interface RuleListeners {
  readonly all: Listeners;
  readonly wide: Listeners;
}

const known = new WeakMap<readonly Rule[], RuleListeners>();

/** Worked out once for a list of rules. */
export function listenersOf(rules: readonly Rule[]): RuleListeners {
  const already = known.get(rules);
  if (already !== undefined) return already;
  const listeners = { all: gather(rules), wide: gather(rules.filter((rule) => rule.looksAt === 'procedure')) };
  known.set(rules, listeners);
  return listeners;
}

function gather(rules: readonly Rule[]): Listeners {
  const listeners: Partial<Record<VisitorName, Listener[]>> = {};
  for (const rule of rules) {
    for (const [name, visit] of Object.entries(rule.check) as [VisitorName, Listener['visit']][]) {
      listeners[name] = [...(listeners[name] ?? []), { rule, visit }];
    }
  }
  return listeners;
}
