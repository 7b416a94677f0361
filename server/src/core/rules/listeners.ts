import type { Rule, Visitors } from './defineRule';
import type { RuleContext } from './ruleContext';

export type VisitorName = keyof Visitors<never>;

export interface Listener {
  readonly rule: Rule;
  readonly visit: (value: unknown, context: RuleContext) => void;
}

/** Who wants to see what. */
export type Listeners = Readonly<Partial<Record<VisitorName, readonly Listener[]>>>;

const known = new WeakMap<readonly Rule[], Listeners>();

/** The listeners of a list of rules, worked out once. */
export function listenersOf(rules: readonly Rule[]): Listeners {
  const already = known.get(rules);
  if (already !== undefined) return already;
  const listeners = gather(rules);
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
