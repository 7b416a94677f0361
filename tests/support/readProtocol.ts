import ts from 'typescript';
import type { MethodShapes, ProtocolShapes } from './protocolShapes';
import { ShapesOfTypes } from './shapesOfTypes';

type Read = (args: readonly ts.Type[], shapes: ShapesOfTypes) => MethodShapes;

const optional = <Key extends string>(key: Key, type: ts.Type | undefined, shapes: ShapesOfTypes) =>
  type === undefined || type.flags & (ts.TypeFlags.Void | ts.TypeFlags.Never) ? {} : { [key]: shapes.of(type) };

/** The types that name a message, with what stands at which place in them. */
const READERS: Readonly<Record<string, Read>> = {
  ProtocolRequestType: ([params, result, partial, , registration], shapes) => ({
    is: 'request',
    ...optional('params', params, shapes),
    ...(result === undefined ? {} : { result: shapes.of(result) }),
    ...optional('partialResult', partial, shapes),
    ...optional('registration', registration, shapes),
  }),
  ProtocolRequestType0: ([result, partial, , registration], shapes) => ({
    is: 'request',
    ...(result === undefined ? {} : { result: shapes.of(result) }),
    ...optional('partialResult', partial, shapes),
    ...optional('registration', registration, shapes),
  }),
  ProtocolNotificationType: ([params, registration], shapes) => ({
    is: 'notification',
    ...optional('params', params, shapes),
    ...optional('registration', registration, shapes),
  }),
  ProtocolNotificationType0: ([registration], shapes) => ({
    is: 'notification',
    ...optional('registration', registration, shapes),
  }),
  RequestName: ([params, result], shapes) => ({
    is: 'request',
    ...optional('params', params, shapes),
    ...(result === undefined ? {} : { result: shapes.of(result) }),
  }),
  NotificationName: ([params], shapes) => ({ is: 'notification', ...optional('params', params, shapes) }),
};

/** Reads what the messages of a protocol look like from the types that its modules export. */
export function readProtocol(paths: readonly string[]): ProtocolShapes {
  const program = ts.createProgram([...paths], {
    strict: true,
    noEmit: true,
    skipLibCheck: true,
    types: [],
    target: ts.ScriptTarget.ES2022,
    module: ts.ModuleKind.Preserve,
    moduleResolution: ts.ModuleResolutionKind.Bundler,
    lib: ['lib.es2022.d.ts'],
  });
  const checker = program.getTypeChecker();
  const shapes = new ShapesOfTypes(checker);
  const methods: Record<string, MethodShapes> = {};
  let workDone = 0;
  for (const path of paths) {
    const source = program.getSourceFile(path);
    const module = source === undefined ? undefined : checker.getSymbolAtLocation(source);
    if (module === undefined) throw new Error(`${path} exports nothing`);
    for (const symbol of checker.getExportsOfModule(module)) {
      Object.assign(methods, methodsOf(checker, shapes, unaliased(checker, symbol)));
      if (symbol.name === 'WorkDoneProgress') workDone = progressOf(checker, shapes, unaliased(checker, symbol));
    }
  }
  return { table: shapes.table, methods, workDone };
}

function unaliased(checker: ts.TypeChecker, symbol: ts.Symbol): ts.Symbol {
  return symbol.flags & ts.SymbolFlags.Alias ? checker.getAliasedSymbol(symbol) : symbol;
}

/** A namespace with its `method` and `type`, or a value of ours that names a message. */
function methodsOf(checker: ts.TypeChecker, shapes: ShapesOfTypes, symbol: ts.Symbol): Record<string, MethodShapes> {
  if (symbol.flags & ts.SymbolFlags.Variable) {
    const read = readType(checker, shapes, checker.getTypeOfSymbol(symbol));
    const method = methodIn(symbol.valueDeclaration);
    return read === undefined || method === undefined ? {} : { [method]: read };
  }
  if (!(symbol.flags & ts.SymbolFlags.ValueModule)) return {};
  const members = new Map(checker.getExportsOfModule(symbol).map((one) => [one.name, checker.getTypeOfSymbol(one)]));
  const method = members.get('method');
  const type = members.get('type');
  const read = type === undefined ? undefined : readType(checker, shapes, type);
  if (read === undefined || method === undefined || !method.isStringLiteral()) return {};
  const announcedBy = announcementIn(checker, members.get('capabilities'));
  return { [method.value]: { ...read, ...(announcedBy === undefined ? {} : { announcedBy }) } };
}

function readType(checker: ts.TypeChecker, shapes: ShapesOfTypes, type: ts.Type): MethodShapes | undefined {
  const name = type.symbol?.name ?? '';
  if (!Object.hasOwn(READERS, name)) return undefined;
  return READERS[name]?.(checker.getTypeArguments(type as ts.TypeReference), shapes);
}

/** `{ method: 'witnessmark/builds' }` as it is written. */
function methodIn(declaration: ts.Declaration | undefined): string | undefined {
  const value =
    declaration !== undefined && ts.isVariableDeclaration(declaration) ? declaration.initializer : undefined;
  const written = value !== undefined && ts.isObjectLiteralExpression(value) ? value.properties : [];
  const texts = written.flatMap((one) =>
    ts.isPropertyAssignment(one) && ts.isStringLiteral(one.initializer) ? [one.initializer.text] : [],
  );
  return texts[0];
}

function announcementIn(checker: ts.TypeChecker, capabilities: ts.Type | undefined): string | undefined {
  const server = capabilities?.getProperty('server');
  const type = server === undefined ? undefined : checker.getTypeOfSymbol(server);
  return type?.isStringLiteral() ? type.value : undefined;
}

function progressOf(checker: ts.TypeChecker, shapes: ShapesOfTypes, symbol: ts.Symbol): number {
  const type = checker.getExportsOfModule(symbol).find((one) => one.name === 'type');
  const told = type === undefined ? undefined : checker.getTypeOfSymbol(type);
  const [one] = told === undefined ? [] : checker.getTypeArguments(told as ts.TypeReference);
  if (one === undefined) throw new Error('Progress has no type');
  return shapes.of(one);
}
