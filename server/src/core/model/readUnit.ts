import { parseConditionText } from '../builds/condition';
import type { MapNode, Node, Pair, ScalarNode } from '../syntax/node';
import { FactCollector, type Unit } from './facts';
import { UNIT_SHAPES } from './generated/shapes';
import { instructionDef } from './instructionDef';
import { readCondition, readCount, readDate, readProse, readQuantityScalar, readRef, readSigned } from './readValues';
import type { Keys, ScalarShape, Shape, UnitShape } from './shape';
import { camel } from './typeNames';
import { validateUnit } from './validateUnit';
import type { BuildCase, ByBuild, CountedRef, Declared, Entry } from './values';

/**
 * Reads a node by the shape of a definition: everything that has the right kind, with its source range, and problems
 * for the rest. Nothing is thrown. A node that was read before is not read again.
 */
export function readUnit(node: Node, def: string): Unit {
  const known = node.remembered as Unit | undefined;
  if (known?.def === def) return known;
  const shape = UNIT_SHAPES[def];
  if (shape === undefined) throw new Error(`No unit ${def}`);
  const unit = new UnitReader(shape).read(node);
  node.remembered = unit;
  return unit;
}

/** What a node was read as; undefined where nobody has read it yet. */
export function unitOf(node: Node): Unit | undefined {
  return node.remembered as Unit | undefined;
}

class UnitReader {
  readonly #shape: UnitShape;
  readonly #facts = new FactCollector();
  readonly #children: Unit[] = [];

  constructor(shape: UnitShape) {
    this.#shape = shape;
  }

  read(node: Node): Unit {
    const value: Record<string, unknown> = this.#object(node, this.#shape.shape.keys, this.#shape.shape.shorthand) ?? {
      node,
    };
    const verb = this.#shape.verb;
    if (verb !== undefined) Object.assign(value, { verb, verbKey: verbKeyOf(node, verb) });
    const problems = validateUnit(node, this.#shape);
    return {
      def: this.#shape.def,
      node,
      value,
      facts: this.#facts,
      problems,
      children: this.#children,
      remembered: undefined,
      summary: undefined,
      view: undefined,
      all: undefined,
    };
  }

  #object(node: Node, keys: Keys, shorthand: string | undefined): Record<string, unknown> | undefined {
    const pairs = node.kind === 'map' ? node.pairs : [];
    const value: Record<string, unknown> = { node };
    if (node.kind === 'map') this.#readPairs(pairs, keys, value);
    else if (shorthand !== undefined && keys[shorthand] !== undefined) {
      value[camel(shorthand)] = this.#value(node, keys[shorthand].shape, shorthand);
    } else return undefined;
    return value;
  }

  #readPairs(pairs: readonly Pair[], keys: Keys, into: Record<string, unknown>): void {
    for (const pair of pairs) {
      const key = keys[pair.key.text];
      const name = camel(pair.key.text);
      if (key === undefined || pair.value === undefined || name in into) continue;
      const value = this.#value(pair.value, key.shape, pair.key.text);
      if (value !== undefined) into[name] = value;
    }
  }

  #value(node: Node, shape: Shape, key: string): unknown {
    switch (shape.as) {
      case 'scalar':
        return shape.many ? this.#scalars(node, shape.scalar, key) : this.#scalar(node, shape.scalar, key);
      case 'prose':
        return shape.many ? this.#many(node, (one) => this.#prose(one, key)) : this.#prose(node, key);
      case 'condition':
        return this.#condition(node, key);
      case 'by-build':
        return this.#byBuild(node, shape.scalar, key);
      case 'counted':
        return this.#counted(node, shape, key);
      case 'list':
        return node.kind === 'list' ? this.#list(node.items, shape.items, key) : undefined;
      case 'entries':
        return this.#entries(node, shape, key);
      case 'object':
        return shape.many
          ? this.#many(node, (one) => this.#object(one, shape.keys, shape.shorthand))
          : this.#object(node, shape.keys, shape.shorthand);
      case 'unit':
        return this.#child(node, shape.def);
      case 'instruction':
        return this.#instruction(node);
    }
  }

  /** Of a procedure with thousands of steps this goes through all of them after each key. */
  #list(nodes: readonly Node[], shape: Shape, key: string): unknown[] {
    const values: unknown[] = [];
    for (const node of nodes) {
      const value = this.#value(node, shape, key);
      if (Array.isArray(value)) values.push(...value);
      else if (value !== undefined) values.push(value);
    }
    return values;
  }

  #many<Value>(node: Node, read: (one: Node) => Value | undefined): Value[] {
    const values: Value[] = [];
    for (const one of node.kind === 'list' ? node.items : [node]) {
      const value = read(one);
      if (value !== undefined) values.push(value);
    }
    return values;
  }

  /** Lists of ids are what there is most of. */
  #scalars(node: Node, shape: ScalarShape, key: string): unknown[] {
    const values: unknown[] = [];
    if (node.kind !== 'list') {
      const value = this.#scalar(node, shape, key);
      if (value !== undefined) values.push(value);
      return values;
    }
    for (const one of node.items) {
      const value = this.#scalar(one, shape, key);
      if (value !== undefined) values.push(value);
    }
    return values;
  }

  #child(node: Node, def: string): unknown {
    const unit = readUnit(node, def);
    this.#children.push(unit);
    return unit.value;
  }

  #instruction(node: Node): unknown {
    return this.#child(node, instructionDef(node));
  }

  #prose(node: Node, key: string): unknown {
    const prose = readProse(node);
    if (prose !== undefined) this.#facts.add('prose', { key, prose });
    return prose;
  }

  #condition(node: Node, key: string): unknown {
    const condition = readCondition(node);
    this.#facts.add('conditions', { key, condition });
    return condition;
  }

  #scalar(node: Node, shape: ScalarShape, key: string): unknown {
    if (node.kind !== 'scalar')
      return shape.is === 'prose' || shape.is === 'ref-or-prose' ? this.#refOrProse(node, shape, key) : undefined;
    switch (shape.is) {
      case 'text':
        return { node, text: node.text };
      case 'prose':
        return this.#prose(node, key);
      case 'ref-or-prose':
        return this.#refOrProse(node, shape, key);
      case 'declares':
        return this.#declare(node, shape.kind);
      case 'ref':
        return shape.words?.includes(node.text) ? this.#word(node, shape) : this.#ref(node, shape, key);
      case 'signed':
        return this.#signed(node, shape, key);
      case 'quantity':
        return this.#quantity(node, shape, key);
      case 'count':
        return readCount(node);
      case 'flag':
        return { node, value: node.text === 'true' };
      case 'date':
        return readDate(node);
      case 'choice':
        return { node, value: shape.choices.includes(node.text) ? node.text : undefined };
      case 'path':
        return this.#path(node, shape.to);
    }
  }

  #word(node: ScalarNode, shape: ScalarShape & { is: 'ref' }): unknown {
    return readRef(node, shape.kind);
  }

  #ref(node: ScalarNode, shape: ScalarShape & { is: 'ref' }, key: string): unknown {
    const ref = readRef(node, shape.kind, shape.listing ?? false);
    this.#facts.add('refs', { key, ref });
    return ref;
  }

  /** A word like an id names a check; anything else is its wording. */
  #refOrProse(node: Node, shape: ScalarShape, key: string): unknown {
    if (shape.is === 'ref-or-prose' && node.kind === 'scalar' && /^[a-z][a-z0-9-]*$/.test(node.text)) {
      const ref = readRef(node, shape.kind);
      this.#facts.add('refs', { key, ref });
      return { is: 'ref', ref };
    }
    const prose = this.#prose(node, key);
    return prose === undefined ? undefined : shape.is === 'prose' ? prose : { is: 'prose', prose };
  }

  #signed(node: ScalarNode, shape: ScalarShape & { is: 'signed' }, key: string): unknown {
    const signed = readSigned(node, shape.kind);
    if ('id' in signed.term) this.#facts.add('refs', { key, ref: signed.term });
    else this.#facts.add('quantities', { key, value: signed.term });
    return signed;
  }

  #quantity(node: ScalarNode, shape: ScalarShape & { is: 'quantity' }, key: string): unknown {
    const value = readQuantityScalar(node, shape);
    this.#facts.add('quantities', { key, value });
    return value;
  }

  #path(node: ScalarNode, to: string): unknown {
    const path = { node, path: node.text, to };
    this.#facts.add('paths', path);
    return path;
  }

  #declare(node: ScalarNode, kind: Declared['kind']): Declared {
    const declared = { node, kind, id: node.text };
    this.#facts.add('declared', declared);
    return declared;
  }

  #byBuild(node: Node, scalar: ScalarShape, key: string): unknown {
    if (node.kind === 'scalar') return { is: 'one', node, value: this.#scalar(node, scalar, key) };
    if (node.kind !== 'map') return undefined;
    const cases = node.pairs.flatMap((pair) => this.#case(pair, scalar, key) ?? []);
    const byBuild: ByBuild<unknown> = { is: 'cases', node, cases };
    this.#facts.add('byBuilds', { key, byBuild });
    return byBuild;
  }

  #case(pair: Pair, scalar: ScalarShape, key: string): BuildCase<unknown> | undefined {
    const value = pair.value === undefined ? undefined : this.#scalar(pair.value, scalar, key);
    if (value === undefined) return undefined;
    return { key: pair.key, expr: parseConditionText(pair.key.text), otherwise: pair.key.text === 'otherwise', value };
  }

  #counted(node: Node, shape: Shape & { as: 'counted' }, key: string): CountedRef[] {
    const scalar = { is: 'ref', kind: shape.kind } as const;
    if (node.kind !== 'map') {
      const refs = this.#many(node, (one) => this.#scalar(one, scalar, key) as CountedRef['ref'] | undefined);
      return refs.map((ref) => ({ ref, count: undefined }));
    }
    return node.pairs.map((pair) => ({
      ref: this.#scalar(pair.key, scalar, key) as CountedRef['ref'],
      count: pair.value?.kind === 'scalar' ? readCount(pair.value) : undefined,
    }));
  }

  #entries(node: Node, shape: Shape & { as: 'entries' }, key: string): Entry<unknown>[] | undefined {
    if (node.kind !== 'map') return undefined;
    return node.pairs.flatMap((pair) => {
      const id =
        shape.declares === undefined
          ? { node: pair.key, kind: 'rule' as const, id: pair.key.text }
          : this.#declare(pair.key, shape.declares);
      const value = pair.value === undefined ? undefined : this.#value(pair.value, shape.values, key);
      return value === undefined ? [] : [{ id, value }];
    });
  }
}

function verbKeyOf(node: Node, verb: string): ScalarNode | undefined {
  if (node.kind === 'scalar') return node;
  return (node as MapNode).kind === 'map'
    ? (node as MapNode).pairs.find((pair) => pair.key.text === verb)?.key
    : undefined;
}
