import {
  DEFAULT_SETTINGS,
  type Language,
  type Paper,
  type Settings,
  type Severity,
  type Sides,
} from '../core/analysis/settings';

/** What the editor writes between the words of a line, as far as it shows such hints. */
export interface HintChoices {
  /** A quantity in its second unit. */
  readonly secondUnit: boolean;
  /** Which way a fastener turns. */
  readonly turn: boolean;
  /** The line of the kit that a part comes from. */
  readonly kitItem: boolean;
}

/** What the editor writes above a line, as far as it shows such lenses. */
export interface LensChoices {
  /** How often a thing is named. */
  readonly uses: boolean;
  /** Which builds a procedure or a step is for. */
  readonly builds: boolean;
}

/** Everything that a client can set. What settings documents say too, they say first. */
export interface ClientConfiguration extends Settings {
  readonly hints: HintChoices;
  readonly lenses: LensChoices;
}

export const DEFAULT_CONFIGURATION: ClientConfiguration = {
  ...DEFAULT_SETTINGS,
  hints: { secondUnit: true, turn: true, kitItem: true },
  lenses: { uses: true, builds: true },
};

/** The name of the section, and so how every setting begins. */
export const SECTION = 'witnessmark';

/**
 * Reads what a client sends as its settings: nested or with dotted names, with the section around it or without. What
 * is not there or makes no sense is as if it had not been sent.
 */
export function readConfiguration(sent: unknown): ClientConfiguration {
  const section = tableOf(sent, SECTION);
  const table = Object.keys(section).length > 0 ? section : tableOf({ sent }, 'sent');
  return {
    paper: oneOf(table.paper, PAPERS) ?? DEFAULT_CONFIGURATION.paper,
    sides: oneOf(table.sides, SIDES) ?? DEFAULT_CONFIGURATION.sides,
    language: oneOf(table.language, LANGUAGES) ?? DEFAULT_CONFIGURATION.language,
    // What documents are written in is theirs to say, not the reader's.
    writtenIn: DEFAULT_CONFIGURATION.writtenIn,
    severities: mapOf(tableOf(table, 'severities'), (value) => oneOf(value, SEVERITIES)),
    units: mapOf(tableOf(table, 'units'), symbolsOf),
    hints: choices(tableOf(table, 'hints'), DEFAULT_CONFIGURATION.hints),
    lenses: choices(tableOf(table, 'lenses'), DEFAULT_CONFIGURATION.lenses),
  };
}

/** Whether two say the same. */
export function areSameConfigurations(a: ClientConfiguration, b: ClientConfiguration): boolean {
  const plain = (one: ClientConfiguration) =>
    JSON.stringify({ ...one, severities: [...one.severities], units: [...one.units] });
  return plain(a) === plain(b);
}

const PAPERS: readonly Paper[] = ['a4', 'letter'];
const SIDES: readonly Sides[] = ['single', 'double'];
const LANGUAGES: readonly Language[] = ['en', 'de', 'es'];
const SEVERITIES: readonly (Severity | 'off')[] = ['error', 'warning', 'info', 'off'];

type Table = Readonly<Record<string, unknown>>;

/** What stands under a name, also where clients write the names below it dotted: `{ 'hints.turn': true }`. */
function tableOf(outer: unknown, name: string): Table {
  if (!isTable(outer)) return {};
  const inner = outer[name];
  const dotted = Object.entries(outer).flatMap(([key, value]) =>
    key.startsWith(`${name}.`) ? [[key.slice(name.length + 1), value] as const] : [],
  );
  return { ...(isTable(inner) ? inner : {}), ...Object.fromEntries(dotted) };
}

function isTable(value: unknown): value is Table {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

function oneOf<Choice extends string>(value: unknown, all: readonly Choice[]): Choice | undefined {
  return all.find((one) => one === value);
}

function symbolsOf(value: unknown): readonly string[] | undefined {
  const symbols = (Array.isArray(value) ? value : [value]).filter((one): one is string => typeof one === 'string');
  return symbols.length === 0 ? undefined : symbols.slice(0, 2);
}

function mapOf<Value>(table: Table, read: (value: unknown) => Value | undefined): ReadonlyMap<string, Value> {
  return new Map(
    Object.entries(table).flatMap(([key, value]) => {
      const one = read(value);
      return one === undefined ? [] : [[key, one] as const];
    }),
  );
}

function choices<Choices extends { readonly [Name in keyof Choices]: boolean }>(
  table: Table,
  defaults: Choices,
): Choices {
  const said = Object.keys(defaults).filter((name) => typeof table[name] === 'boolean');
  return { ...defaults, ...Object.fromEntries(said.map((name) => [name, table[name]])) };
}
