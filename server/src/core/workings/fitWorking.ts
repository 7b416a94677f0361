import type { FamilyView } from '../analysis/familyView';
import { presentBuilds } from '../analysis/presentBuilds';
import { describeBuilds } from '../builds';
import type { Part } from '../model/generated/types';
import { ambient, type FitMethod, type FitNeed, fitNeed, usualMethod } from './fitNeeds';
import { type FitCase, type FitSize, fitCases } from './fitSizes';
import { temperatureText } from './fitTemperature';
import { lengthText } from './limitText';
import type { Working, WorkingRow } from './working';

/** How a part fits on the other one, and what it has to be heated to, by build. */
export function fitWorkingsOf(family: FamilyView, id: string): Working[] {
  const part = family.part(id);
  if (part?.fit === undefined) return [];
  const cases = fitCases(family, id, family.space);
  if (cases.length === 0) return [withoutSizes(family, id, part)];
  return cases.map((one) => fitWorking(family, one, usualMethod(id, part)));
}

/** A fit, and the temperature that one of its parts needs to go on where it is known which one is heated or cooled. */
export function fitWorking(family: FamilyView, one: FitCase, method: FitMethod | undefined): Working {
  const tight = one.fit.leastClearance < 0 && method !== undefined ? fitNeed(family, one, method) : undefined;
  const needed = tight?.known === true ? tight.needed.steps : [];
  return {
    title: titleOf(family, one),
    builds: describeBuilds(one.where, one.space),
    rows: [...fitRows(family, one), ...(method === undefined ? [] : needRows(family, tight, method))],
    steps: [...one.fit.steps, ...needed],
    missing: tight?.known === false ? tight.missing : [],
    sources: sourcesOf(one, tight),
  };
}

function titleOf(family: FamilyView, { part, other }: FitCase): string {
  const on = other === undefined ? '' : ` and the ${family.nameOf(other)}`;
  return `Fit of the ${family.nameOf(part)}${on}`;
}

function fitRows(family: FamilyView, one: FitCase): WorkingRow[] {
  const { bore, shaft, fit, unit, assumed } = one;
  const shown = ({ text, from }: FitSize): string =>
    from === 'class' ? `${text}, assumed from ISO 286-1 for ${assumed ?? ''}` : text;
  const wanted = family.part(one.part)?.fit?.clearance?.text.trim();
  return [
    { label: 'bore', text: shown(bore) },
    { label: 'shaft', text: shown(shaft) },
    { label: 'kind of fit', text: fit.kind },
    { label: 'tightest', text: playText(fit.leastClearance, unit) },
    { label: 'loosest', text: playText(fit.greatestClearance, unit) },
    ...(wanted === undefined ? [] : [{ label: 'clearance wanted while it is fitted', text: wanted }]),
  ];
}

function playText(clearance: number, unit: FitCase['unit']): string {
  const word = clearance < 0 ? 'interference' : 'clearance';
  return `${lengthText(Math.abs(clearance), unit)} ${word}`;
}

function needRows(family: FamilyView, need: FitNeed | undefined, method: FitMethod): WorkingRow[] {
  if (need === undefined) return [{ label: 'temperature', text: 'goes together without heat' }];
  if (!need.known) return [];
  const stands = family.part(need.part)?.maxTemperature;
  const limit = stands?.is === 'one' ? [{ label: 'stands at most', text: stands.value.text.trim() }] : [];
  const name = family.nameOf(need.part);
  const label = method.is === 'heated' ? `the ${name} needs at least` : `the ${name} needs at most`;
  return [
    { label, text: temperatureText(need.needed.temperature, undefined, method.is === 'heated' ? 'up' : 'down') },
    ...limit,
    { label: 'assumed', text: `the other part, and all lengths, at ${ambient} °C` },
  ];
}

function sourcesOf({ assumed }: FitCase, need: FitNeed | undefined): string[] {
  const tables = need?.known === true ? need.expansions.flatMap(({ assumedFrom }) => assumedFrom ?? []) : [];
  const classes = assumed === undefined ? [] : ['ISO 286-1:2010'];
  const formula =
    need === undefined ? [] : ['ISO 1:2022 (20 °C)', 'ΔT = (δ + c)/(α·d) (textbook formula of shrink fits)'];
  return [...classes, ...new Set(tables), ...formula];
}

function withoutSizes(family: FamilyView, id: string, { fit }: Part): Working {
  const missing = [
    ...(fit?.bore === undefined ? ['the dimension of the bore'] : [`a value of the dimension ${fit.bore.id}`]),
    ...(fit?.shaft === undefined ? ['the dimension of the shaft'] : [`a value of the dimension ${fit.shaft.id}`]),
  ];
  return {
    title: `Fit of the ${family.nameOf(id)}`,
    builds: describeBuilds(presentBuilds(family, family.space, id), family.space),
    rows: fit?.class === undefined ? [] : [{ label: 'class', text: fit.class.text }],
    steps: [],
    missing,
    sources: [],
  };
}
