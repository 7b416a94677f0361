import type { BuildFacts, ConditionExpr } from '../../server/src/core/builds';

/** An invented family: two variants, a larger wheel that needs its own cover, a nut whose hand only the bench can tell. */
export const OSTREL: BuildFacts = {
  variants: [
    { id: 'v4-20', name: 'V4-20' },
    { id: 'v4-28r', name: 'V4-28R' },
  ],
  options: [
    {
      id: 'wheel-44',
      name: '44 mm machined compressor wheel',
      variants: ['v4-28r'],
      needs: ['cover-44'],
      excludes: [],
    },
    { id: 'cover-44', name: 'compressor cover bored for the 44 mm wheel', needs: [], excludes: [] },
  ],
  identify: [{ id: 'nut-hand', name: 'hand of the compressor nut', values: ['left', 'right'], when: is('v4-28r') }],
  renewable: [{ id: 'compressor-wheel', name: 'compressor wheel', when: { kind: 'always' } }],
};

/** The procedure for it: a unit may arrive with the cover only; wheel and cover may be added. */
export const OSTREL_OVERHAUL: BuildFacts = {
  ...OSTREL,
  covers: { variants: ['v4-20', 'v4-28r'], options: ['cover-44'] },
  adds: ['wheel-44', 'cover-44'],
};

export function option(id: string, more: Partial<BuildFacts['options'][number]> = {}): BuildFacts['options'][number] {
  return { id, name: `the ${id}`, needs: [], excludes: [], ...more };
}

/** Facts of one variant, to try rules of options on. */
export function oneVariant(options: BuildFacts['options'], more: Partial<BuildFacts> = {}): BuildFacts {
  return { variants: [{ id: 'only', name: 'Only' }], options, identify: [], renewable: [], ...more };
}

export function is(id: string): ConditionExpr {
  return { kind: 'is', id };
}

export function arrives(id: string): ConditionExpr {
  return { kind: 'arrives', id };
}

export function outcome(name: string, value: string): ConditionExpr {
  return { kind: 'outcome', name, value };
}

export function all(...of: ConditionExpr[]): ConditionExpr {
  return { kind: 'all', of };
}

export function any(...of: ConditionExpr[]): ConditionExpr {
  return { kind: 'any', of };
}

export function none(...of: ConditionExpr[]): ConditionExpr {
  return { kind: 'none', of };
}
