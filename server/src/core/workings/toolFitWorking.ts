import type { ProcedureView } from '../analysis/procedureView';
import { type BuildSet, describeBuilds } from '../builds';
import { toolsFor } from './toolFit';
import { type SizeNeed, sizeNeeds } from './toolSizeNeeds';
import { gripText, widthText } from './toolSizeText';
import type { Working, WorkingRow } from './working';

/** Which size of tool a fastener needs, where that is known from, and which tools of the stores have it: one for each size. */
export function toolFitWorkings(procedure: ProcedureView, id: string, within: BuildSet): Working[] {
  const name = procedure.family?.nameOf(id) ?? id;
  const { needs, unknown } = sizeNeeds(procedure, id, within);
  const known = needs.map((need) => needWorking(procedure, name, need, within));
  if (unknown.isEmpty) return known;
  const builds = unknown.equals(within) ? '' : describeBuilds(unknown, procedure.space);
  const missing = [`the width across flats of the ${name}, or its drive and thread`];
  return [...known, { title: titleOf(name), builds, rows: [], steps: [], missing, sources: [] }];
}

function titleOf(name: string): string {
  return `Size of tool for the ${name}`;
}

function needWorking(procedure: ProcedureView, name: string, need: SizeNeed, within: BuildSet): Working {
  const fitting = toolsFor(procedure, need).map((id) => procedure.tools.get(id)?.entry.value.name?.text ?? id);
  const tools: WorkingRow = {
    label: 'Tools of the stores that fit',
    text: fitting.length === 0 ? 'none' : fitting.join(', '),
  };
  return {
    title: titleOf(name),
    builds: need.where.equals(within) ? '' : describeBuilds(need.where, procedure.space),
    rows: [...sizeRows(need), tools],
    steps: [],
    missing: [],
    sources: need.known === 'assumed' ? [need.standard] : [],
  };
}

function sizeRows(need: SizeNeed): WorkingRow[] {
  const label = need.grip.is === 'named' ? 'Drive' : 'Across flats';
  if (need.known === 'stated') return [{ label, text: `${gripText(need.grip)}, as the family states` }];
  return [
    { label: 'Thread', text: `${need.thread}, as the family states` },
    { label, text: `${gripText(need.grip)}, assumed from ${need.standard}; the family states none` },
    { label: 'Widths that are met with', text: need.met.map(widthText).join(', ') },
  ];
}
