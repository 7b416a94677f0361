import type { ProcedureView } from '../core/analysis/procedureView';
import type { Settings } from '../core/analysis/settings';
import type { Build, BuildSet } from '../core/builds';
import type { Finding } from '../core/rules/finding';
import type { Paper, Sheet } from '../core/sheet/sheet';

interface Picked {
  readonly build: Build;
  readonly set: BuildSet;
}

interface Options {
  readonly findings: readonly Finding[];
  readonly settings: Settings;
  readonly language: 'en';
  readonly paper: Paper;
}

/** Builds the sheet of a procedure for a build: head and titles only, until sentences are written. */
export function buildSheet(procedure: ProcedureView, picked: Picked, options: Options): Sheet {
  const text = (value: { text: string } | undefined) => value?.text ?? '';
  const { value } = procedure;
  return {
    format: 1,
    language: options.language,
    paper: options.paper,
    header: {
      document: text(value.procedure),
      title: text(value.title),
      revision: text(value.revision),
      status: value.status?.value ?? 'draft',
      family: text(procedure.family?.value.name),
      build: picked.build.label,
      kits: [],
    },
    safety: { wear: [] },
    asReceived: [],
    beforeYouStart: [],
    hazards: [],
    tools: [],
    consumables: [],
    kits: [],
    phases: [],
    torqueTable: [],
    recordTable: [],
    findings: [],
    concessions: [],
    atInstallation: [],
    revisions: [],
  };
}
