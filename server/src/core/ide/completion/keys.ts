import { UNIT_SHAPES, VERBS } from '../../model/generated/shapes';
import { isVerb } from '../../model/instructionDef';
import type { KeyShape, Keys, Shape } from '../../model/shape';
import { type Candidate, NOTHING } from './candidate';
import { CONDITION_KEYS, conditionCandidates } from './conditionNames';
import { ruleCandidates, things } from './ids';
import { type KeyLayout, keySnippet, keyText, requiredSnippet } from './keySnippet';
import type { CompletionScene } from './scene';
import { PROSE_KEYS } from './shapeAt';

/** The keys that a map at the cursor can have, less those that it has. */
export function keyCandidates(scene: CompletionScene): readonly Candidate[] {
  const taken = new Set(scene.context.keys());
  return allKeys(scene, taken).filter(({ label }) => !taken.has(label));
}

function allKeys(scene: CompletionScene, taken: ReadonlySet<string>): readonly Candidate[] {
  const { shape } = scene.place;
  switch (shape.as) {
    case 'object':
      return objectKeys(scene, shape.keys, taken);
    case 'entries':
      // Where ids are declared they are new; only rules are there already.
      return shape.declares === undefined ? withValue(scene, ruleCandidates(), shape.values) : NOTHING;
    case 'by-build':
      return withValue(scene, caseNames(scene), { as: 'scalar', scalar: shape.scalar, many: false });
    case 'counted':
      return withValue(scene, things(scene, shape.kind), COUNT);
    case 'condition':
      return withValue(
        scene,
        CONDITION_KEYS.map(([label, why]) => ({ kind: 'key', label, detail: why })),
        LIST,
      );
    case 'prose':
      return withValue(
        scene,
        PROSE_KEYS.map((label) => ({ kind: 'key', label })),
        COUNT,
      );
    default:
      return NOTHING;
  }
}

const COUNT: Shape = { as: 'scalar', scalar: { is: 'count' }, many: false };
const LIST: Shape = { as: 'scalar', scalar: { is: 'text' }, many: true };

/** The names of builds and outcomes that a value can differ by, and the word for the rest of them. */
function caseNames(scene: CompletionScene): Candidate[] {
  return [...conditionCandidates(scene), { kind: 'word', label: 'otherwise', why: 'all other builds' }];
}

function objectKeys(scene: CompletionScene, keys: Keys, taken: ReadonlySet<string>): readonly Candidate[] {
  const { def } = scene.place;
  const inOrder = Object.entries(keys).sort(([, a], [, b]) => Number(b.required) - Number(a.required));
  const own = inOrder.map(([name, key]) => keyCandidate(scene, name, key));
  if (isInstruction(scene)) return instructionKeys(scene, own, taken);
  const isNewEntry = scene.context.layout === 'behind-dash' && taken.size === 0 && !scene.context.hasColon;
  return isNewEntry && def !== 'procedure/notice-line' ? wholeEntryFirst(scene, keys, own) : own;
}

function isInstruction({ place }: CompletionScene): boolean {
  return place.path.length === 0 && /^procedure\/(?:verb-|sentence)/.test(place.def);
}

/** Without a verb, the verbs come first; with one, its keys are wanted and no other verb. */
function instructionKeys(scene: CompletionScene, own: readonly Candidate[], taken: ReadonlySet<string>): Candidate[] {
  if ([...taken].some(isVerb)) return ownFirst(own.filter(({ label }) => !isVerb(label)));
  const say = own.filter(({ label }) => label === 'say');
  const rest = own.filter(({ label }) => label !== 'say' && !isVerb(label));
  return taken.has('say') ? [...rest, ...verbCandidates(scene)] : [...verbCandidates(scene), ...say, ...rest];
}

/** What only this verb has comes before what every instruction has. */
function ownFirst(candidates: readonly Candidate[]): Candidate[] {
  const common = UNIT_SHAPES['procedure/sentence']?.shape.keys ?? {};
  const isOwn = ({ label }: Candidate) => !Object.hasOwn(common, label);
  return [...candidates.filter(isOwn), ...candidates.filter((one) => !isOwn(one))];
}

/** Every verb, as the key of an instruction. */
export function verbCandidates(scene: CompletionScene): Candidate[] {
  return VERBS.flatMap((verb) => {
    const def = `procedure/verb-${verb}`;
    const unit = UNIT_SHAPES[def];
    const key = unit?.shape.keys[verb];
    if (unit === undefined || key === undefined) return [];
    const about = { is: 'key', def, path: [verb] } as const;
    return [{ ...keyCandidate(scene, verb, key), kind: 'verb', why: undefined, about } as const];
  });
}

/** The first key of a new entry brings along all that the entry cannot be without. */
function wholeEntryFirst(scene: CompletionScene, keys: Keys, own: readonly Candidate[]): readonly Candidate[] {
  const [first, ...rest] = own;
  return first === undefined ? own : [{ ...first, snippet: requiredSnippet(keys, layoutOf(scene)) }, ...rest];
}

function keyCandidate(scene: CompletionScene, name: string, { shape, required }: KeyShape): Candidate {
  const { place } = scene;
  const about = { is: 'key', def: place.def, path: [...place.path, name] } as const;
  const candidate: Candidate = { kind: 'key', label: name, about };
  return laidOut(scene, required ? { ...candidate, why: 'needed' } : candidate, shape);
}

function withValue(scene: CompletionScene, candidates: readonly Candidate[], shape: Shape): Candidate[] {
  return candidates.map((one) => laidOut(scene, one, shape));
}

/** Where a colon stands already, only the name is written. */
function laidOut(scene: CompletionScene, candidate: Candidate, shape: Shape): Candidate {
  if (scene.context.hasColon) return { ...candidate, text: candidate.label };
  const snippet = keySnippet(candidate.label, shape, layoutOf(scene));
  return { ...candidate, text: keyText(candidate.label, shape), snippet };
}

function layoutOf({ context }: CompletionScene): KeyLayout {
  const { layout, column, lineIndent } = context;
  return { flow: layout === 'flow', indent: ' '.repeat(Math.max(0, column - lineIndent)) };
}
