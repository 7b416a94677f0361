import fc from 'fast-check';

/** What is drawn of one larger part of the unit. Numbers are taken modulo what they choose from. */
export interface BodyPlan {
  readonly carrier: number;
  readonly behind: readonly number[];
  readonly fastening: 'none' | 'nut' | 'bolts' | 'ring-off' | 'ring-stays' | 'clamp-off' | 'clamp-stays' | 'shared';
  readonly fastenerOnBody: boolean;
  readonly fastenerBehind: boolean;
  readonly singleUse: boolean;
  readonly fastenerPreparation: 'none' | 'clean' | 'lubricate' | 'threadlock' | 'clean-and-threadlock';
  readonly quantity: number;
  readonly tightening: 'plain' | 'passes' | 'twice' | 'by-piece' | 'angle' | 'angle-after';
  readonly loosenFirst: boolean;
  readonly handByBuild: boolean;
  readonly seal: 'none' | 'on-carrier' | 'on-body';
  readonly onCondition: boolean;
  readonly clean: boolean;
  readonly inspect: boolean;
  readonly lubricate: boolean;
  readonly extra: 'none' | 'heat-and-cool' | 'heat-and-wait' | 'trial' | 'sizes' | 'sent' | 'blasted';
  readonly builds: 'all' | 'variant' | 'option' | 'substitute';
  readonly kept: boolean;
  readonly stripRank: number;
  readonly fitRank: number;
  readonly fastenerRank: number;
}

/** What is drawn of a family and the procedure for it. */
export interface Plan {
  readonly bodies: readonly BodyPlan[];
  readonly work: 'rebuild' | 'assembly' | 'strip';
  readonly mayArrive: boolean;
  readonly mayBeAdded: boolean;
  readonly group: 'none' | 'plain' | 'keep-position';
  readonly groupMembers: readonly [number, number];
  readonly blank: boolean;
  readonly adjuster: 'none' | 'plain' | 'loop';
  readonly optionalStep: boolean;
  readonly repair: boolean;
  readonly calculation: boolean;
  readonly checks: readonly (readonly number[])[];
  readonly limits: readonly (readonly number[])[];
  readonly soonMeasured: boolean;
  readonly stepLength: number;
}

const flag = fc.boolean();
const seldom = fc.integer({ min: 0, max: 3 }).map((drawn) => drawn === 3);
const number = fc.nat(997);

const body: fc.Arbitrary<BodyPlan> = fc.record({
  carrier: number,
  behind: fc.array(number, { maxLength: 2 }),
  fastening: fc.constantFrom(
    'none',
    'nut',
    'bolts',
    'ring-off',
    'ring-stays',
    'clamp-off',
    'clamp-stays',
    'nut',
    'shared',
  ),
  fastenerOnBody: seldom,
  fastenerBehind: flag,
  singleUse: flag,
  fastenerPreparation: fc.constantFrom('none', 'clean', 'lubricate', 'threadlock', 'clean-and-threadlock'),
  quantity: fc.integer({ min: 1, max: 4 }),
  tightening: fc.constantFrom('plain', 'passes', 'twice', 'by-piece', 'angle', 'angle-after'),
  loosenFirst: flag,
  handByBuild: seldom,
  seal: fc.constantFrom('none', 'none', 'on-carrier', 'on-body'),
  onCondition: flag,
  clean: flag,
  inspect: seldom,
  lubricate: flag,
  extra: fc.constantFrom('none', 'none', 'heat-and-cool', 'heat-and-wait', 'trial', 'sizes', 'sent', 'blasted'),
  builds: fc.constantFrom('all', 'all', 'all', 'variant', 'option', 'substitute'),
  kept: seldom,
  stripRank: number,
  fitRank: number,
  fastenerRank: number,
});

const someParts = fc.array(number, { minLength: 1, maxLength: 3 });

/** A family and a procedure for it, still as choices: what is built from them is right by its making. */
export const plans: fc.Arbitrary<Plan> = fc.record({
  bodies: fc.array(body, { minLength: 1, maxLength: 5 }),
  work: fc.constantFrom('rebuild', 'rebuild', 'rebuild', 'rebuild', 'assembly', 'strip'),
  mayArrive: flag,
  mayBeAdded: flag,
  group: fc.constantFrom('none', 'plain', 'keep-position', 'keep-position'),
  groupMembers: fc.tuple(number, number),
  blank: flag,
  adjuster: fc.constantFrom('none', 'plain', 'loop'),
  optionalStep: seldom,
  repair: seldom,
  calculation: seldom,
  checks: fc.array(someParts, { maxLength: 2 }),
  limits: fc.array(someParts, { maxLength: 2 }),
  soonMeasured: flag,
  stepLength: fc.integer({ min: 1, max: 5 }),
});
