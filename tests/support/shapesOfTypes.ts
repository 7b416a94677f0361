import ts from 'typescript';
import type { Property, Shape } from './valueShapes';

/** Turns types, as the compiler knows them, into shapes that values can be held against while a program runs. */
export class ShapesOfTypes {
  readonly table: Shape[] = [{ is: 'anything' }];
  readonly #checker: ts.TypeChecker;
  readonly #known = new Map<ts.Type, number>();

  constructor(checker: ts.TypeChecker) {
    this.#checker = checker;
  }

  /** The place of a type's shape in the table. */
  of(type: ts.Type): number {
    const known = this.#known.get(type);
    if (known !== undefined) return known;
    // The place is taken before the shape is known, since a type may contain itself.
    const place = this.table.push({ is: 'anything' }) - 1;
    this.#known.set(type, place);
    this.table[place] = this.#shape(type);
    return place;
  }

  #shape(type: ts.Type): Shape {
    const { flags } = type;
    if (flags & ts.TypeFlags.String || flags & ts.TypeFlags.TemplateLiteral) return { is: 'string' };
    if (flags & ts.TypeFlags.Number) return { is: 'number' };
    if (flags & ts.TypeFlags.Boolean) return { is: 'boolean' };
    if (flags & (ts.TypeFlags.Null | ts.TypeFlags.Undefined | ts.TypeFlags.Void)) return { is: 'null' };
    if (type.isStringLiteral() || type.isNumberLiteral()) return { is: 'literal', value: type.value };
    if (flags & ts.TypeFlags.BooleanLiteral) {
      return { is: 'literal', value: this.#checker.typeToString(type) === 'true' };
    }
    if (flags & ts.TypeFlags.Never) return { is: 'one of', of: [] };
    if (type.isUnion()) return { is: 'one of', of: type.types.map((one) => this.of(one)) };
    if (flags & ts.TypeFlags.Object || type.isIntersection()) return this.#objectShape(type);
    return { is: 'anything' };
  }

  #objectShape(type: ts.Type): Shape {
    const checker = this.#checker;
    const parts = () => checker.getTypeArguments(type as ts.TypeReference).map((one) => this.of(one));
    if (checker.isTupleType(type)) return { is: 'tuple', of: parts() };
    if (checker.isArrayType(type)) return { is: 'array', of: parts()[0] ?? 0 };
    const properties = Object.fromEntries(
      checker.getPropertiesOfType(type).map((symbol) => [symbol.name, this.#property(symbol)]),
    );
    const others = checker.getIndexInfosOfType(type)[0];
    return { is: 'object', properties, ...(others === undefined ? {} : { others: this.of(others.type) }) };
  }

  #property(symbol: ts.Symbol): Property {
    const optional = (symbol.flags & ts.SymbolFlags.Optional) !== 0;
    const named = this.#number(symbol);
    return { shape: named ?? this.#given(this.#checker.getTypeOfSymbol(symbol)), optional };
  }

  /** What stands there where something does: that a property may be left out is said of the property. */
  #given(type: ts.Type): number {
    const types = type.isUnion() ? type.types.filter((one) => !(one.flags & ts.TypeFlags.Undefined)) : [type];
    const [only] = types;
    if (types.length === 1 && only !== undefined) return this.of(only);
    return this.table.push({ is: 'one of', of: types.map((one) => this.of(one)) }) - 1;
  }

  /** The names of the protocol for kinds of numbers are all the same to the compiler. */
  #number(symbol: ts.Symbol): number | undefined {
    const declaration = symbol.valueDeclaration;
    if (declaration === undefined || !ts.isPropertySignature(declaration)) return undefined;
    const written = declaration.type?.getText();
    if (written !== 'uinteger' && written !== 'integer') return undefined;
    return this.table.push({ is: written }) - 1;
  }
}
