import { Names } from '../../analysis/names';
import type { Snapshot } from '../../analysis/snapshot';
import { UNIT_SHAPES } from '../../model/generated/shapes';
import type { Keys } from '../../model/shape';
import { ruleById } from '../../rules/registry';
import type { SyntaxDocument } from '../../syntax/readDocument';
import type { TextEdit } from '../../text/span';
import { type Description, describeThing } from '../thingHover';
import type { CandidateAbout } from './candidate';
import { toolListEdit } from './toolListEdit';

/** What is said of a candidate when somebody looks at it. Undefined where nothing is known. */
export function describeCandidate(
  snapshot: Snapshot,
  document: SyntaxDocument,
  about: CandidateAbout,
): Description | undefined {
  switch (about.is) {
    case 'thing': {
      const thing = Names.of(snapshot, document).find(about.kind, about.id);
      return thing === undefined ? undefined : describeThing(snapshot, document, thing);
    }
    case 'key':
      return describeKey(about.def, about.path);
    case 'rule':
      return describeRule(about.id);
  }
}

/** What accepting a candidate changes elsewhere: a tool that is used is listed in the head of the procedure. */
export function editsOf(document: SyntaxDocument, about: CandidateAbout): TextEdit[] {
  if (about.is !== 'thing' || about.lists !== true || about.kind !== 'tool') return [];
  const edit = toolListEdit(document, about.id);
  return edit === undefined ? [] : [edit];
}

function describeKey(def: string, path: readonly string[]): Description | undefined {
  const unit = UNIT_SHAPES[def];
  let keys: Keys | undefined = unit?.shape.keys;
  let text: string | undefined;
  for (const name of path) {
    const key: Keys[string] | undefined = keys !== undefined && Object.hasOwn(keys, name) ? keys[name] : undefined;
    text = key?.description;
    keys = key?.shape.as === 'object' ? key.shape.keys : undefined;
  }
  if (text === undefined) return undefined;
  const isVerb = unit?.verb !== undefined && path.length === 1 && path[0] === unit.verb;
  const whole = isVerb ? `${unit.description}\n\n${text}` : text;
  return { markdown: whole, plain: whole.replaceAll('`', '') };
}

function describeRule(id: string): Description | undefined {
  const rule = ruleById(id);
  if (rule === undefined) return undefined;
  const text = `${rule.doc.what} ${rule.doc.why}`;
  return {
    markdown: `**${rule.id}** (${rule.severity})\n\n${text}`,
    plain: `${rule.id} (${rule.severity})\n\n${text}`,
  };
}
