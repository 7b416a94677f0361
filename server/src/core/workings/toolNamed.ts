import type { ProcedureView } from '../analysis/procedureView';
import type { Instruction, Tool } from '../model/generated/types';
import type { Ref } from '../model/values';

/** A tool that an instruction names and that the stores have. */
export interface NamedTool {
  readonly ref: Ref;
  readonly id: string;
  readonly tool: Tool;
  readonly name: string;
}

/** The tools that an instruction names; `complete` unless one is named that no stores have. */
export interface NamedTools {
  readonly tools: readonly NamedTool[];
  readonly complete: boolean;
}

/** The tools behind `with`. */
export function toolsWith(procedure: ProcedureView, instruction: Instruction): NamedTools {
  return namedTools(procedure, instruction.with ?? []);
}

/** The tools that counter-hold. */
export function toolsHolding(procedure: ProcedureView, instruction: Instruction): NamedTools {
  return namedTools(procedure, 'hold' in instruction ? (instruction.hold?.with ?? []) : []);
}

type ToolUses = readonly { readonly tool?: Ref }[];

const NO_TOOLS: NamedTools = { tools: [], complete: true };
const looked = new WeakMap<ProcedureView['tools'], WeakMap<ToolUses, NamedTools>>();

/** Looked up once for an instruction in the same stores, since a dozen rules ask. */
function namedTools(procedure: ProcedureView, uses: ToolUses): NamedTools {
  if (uses.length === 0) return NO_TOOLS;
  const known = looked.get(procedure.tools) ?? new WeakMap<ToolUses, NamedTools>();
  looked.set(procedure.tools, known);
  const named = known.get(uses) ?? lookUp(procedure, uses);
  known.set(uses, named);
  return named;
}

function lookUp(procedure: ProcedureView, uses: ToolUses): NamedTools {
  const tools = uses.flatMap(({ tool: ref }): NamedTool[] => {
    const tool = ref === undefined ? undefined : procedure.tools.get(ref.id)?.entry.value;
    return ref === undefined || tool === undefined ? [] : [{ ref, id: ref.id, tool, name: tool.name?.text ?? ref.id }];
  });
  return { tools, complete: tools.length === uses.length };
}

/** The tools that a procedure lists, by id; made once for its head. */
export function listedTools({ value }: ProcedureView): ReadonlySet<string> {
  const { tools } = value;
  if (tools === undefined) return NONE;
  const known = remembered.get(tools) ?? new Set(tools.map((ref) => ref.id));
  remembered.set(tools, known);
  return known;
}

const NONE: ReadonlySet<string> = new Set();
const remembered = new WeakMap<readonly Ref[], ReadonlySet<string>>();

/** Tools of the stores that pass a test, those that the procedure lists first. */
export function toolsOfStores(procedure: ProcedureView, test: (tool: Tool) => boolean): string[] {
  const listed = listedTools(procedure);
  const ids = [...procedure.tools].flatMap(([id, { entry }]) => (test(entry.value) ? [id] : []));
  return ids.sort((a, b) => Number(listed.has(b)) - Number(listed.has(a)));
}
