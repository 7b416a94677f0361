import fc from 'fast-check';
import { expect, test } from 'vitest';
import { FamilyView } from '../../../server/src/core/analysis/familyView';
import { Workspace } from '../../../server/src/core/analysis/workspace';
import { checkDocument } from '../../../server/src/core/rules/checkDocument';
import { THREAD_RULES } from '../../../server/src/core/rules/threads';
import { torqueWorkingsOfPart } from '../../../server/src/core/workings/torqueWorking';
import { TODAY } from '../../support/checkText';

const seed = 20261125;
const URI = 'file:///work/a.family.yaml';
const HEAD =
  'witnessmark: 1\nfamily: pellow-k1\nname: Pellow K1\nvariants: { k1-a: { name: K1-A }, k1-b: { name: K1-B } }\nbase: core\nparts:\n  core: { name: core }\n  spindle: { name: spindle, kind: shaft, sits-on: core, thread: { k1-a: M5×0.8, k1-b: M5×0.5-LH }, property-class: 12.9 }\n';
const NUT = `  cap-nut:
    name: cap nut
    kind: nut
    sits-on: core
    mates-with: spindle
    thread: { k1-a: M5×0.8-6H, k1-b: 1/4-28 UNF-2B-LH }
    hand: { k1-a: right, k1-b: left }
    property-class: { k1-a: 8, otherwise: A2-70 }
    bearing-diameter: 9.2 mm
    friction: 12 %
    prevailing-torque: 0.4..1.1 N·m
    torque: { k1-a: 45 ± 3 N·m, k1-b: 9 lbf·in (1 N·m) }
    angle: { k1-b: 30 ± 5° }
`;

/** Checks a family by the rules on threads, fixes and workings included, which only fail when they are asked for. */
function check(text: string): number {
  const workspace = new Workspace(['file:///work']);
  workspace.set(URI, { is: 'text', text });
  const document = workspace.snapshot.document(URI);
  if (document === undefined) throw new Error('no document');
  const { findings } = checkDocument(workspace.snapshot, document, { today: TODAY, rules: THREAD_RULES });
  for (const finding of findings) JSON.stringify([finding.fixes(), finding.working(), finding.message]);
  const family = FamilyView.of(document);
  for (const id of family?.parts.keys() ?? []) torqueWorkingsOfPart(family as FamilyView, id);
  return findings.length;
}

test('a part is checked while it is being typed', () => {
  for (let end = 0; end < NUT.length; end += 3) expect(check(HEAD + NUT.slice(0, end))).toBeGreaterThanOrEqual(0);
  expect(check(HEAD + NUT)).toBeGreaterThan(2);
});

test(`a part with characters lost, doubled or swapped is checked as well (seed ${seed})`, () => {
  const place = fc.nat(NUT.length - 2);
  const slip = fc.oneof(
    place.map((at) => NUT.slice(0, at) + NUT.slice(at + 1)),
    place.map((at) => NUT.slice(0, at) + NUT.charAt(at) + NUT.slice(at)),
    place.map((at) => NUT.slice(0, at) + NUT.charAt(at + 1) + NUT.charAt(at) + NUT.slice(at + 2)),
    fc.tuple(place, place).map(([one, other]) => NUT.slice(0, one) + NUT.slice(other)),
  );
  fc.assert(
    fc.property(slip, (text) => {
      expect(check(HEAD + text)).toBeLessThan(40);
    }),
    { seed, numRuns: 100 },
  );
});
