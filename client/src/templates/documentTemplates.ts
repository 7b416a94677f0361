/** The documents that can be begun from a template. */
export type TemplateKind = 'family' | 'kit' | 'stores' | 'procedure' | 'settings';

/** What a person is asked for, by the number of the placeholder that takes the answer. */
export type Answer = 'id' | 'name' | 'family' | 'part';

export interface DocumentTemplate {
  /**
   * The document as a snippet: `${1:text}` is a placeholder with what stands there until it is written over, `${1|a,b|}`
   * one with a choice. It is a whole document without an error as it stands. It states no torque and no limit.
   */
  readonly snippet: string;
  readonly answers: Readonly<Partial<Record<Answer, number>>>;
}

const FAMILY = `# A family: the variants of a unit, its parts, and how they hold each other.
witnessmark: 1
family: \${1:my-unit}
name: \${2:Name of the unit}
variants:
  \${3:variant-1}: { name: \${4:Variant 1} }
base: \${5:housing}
# State threads, hands, torques and limits as the maker gives them.
parts:
  \${5:housing}: { name: \${6:housing}, kind: housing }
  \${7:cover}: { name: \${8:cover}, sits-on: \${5:housing}, fastened-by: [\${9:cover-bolt}] }
  \${9:cover-bolt}: { name: \${10:cover bolt}, kind: bolt, quantity: \${11:4}, sits-on: \${5:housing} }
  \${12:cover-seal}: { name: \${13:cover O-ring}, kind: o-ring, sits-on: \${5:housing}, seals: \${7:cover}, behind: [\${7:cover}], renew: always }
$0`;

const KIT = `# A kit bill: what the box contains, line by line.
witnessmark: 1
kit: \${1:K-100}
name: \${2:Name of the kit}
revision: \${3:1}
family: \${4:../families/my-unit.family.yaml}
lines:
  - { item: 10, part: \${5:cover-seal}, number: \${6:"000000"}, quantity: \${7:1} }
$0`;

const STORES = `# Stores: the tools and consumables that the shop holds.
witnessmark: 1
stores: \${1:Bay 1}
tools:
  \${2:socket-10}: { name: \${3:10 mm socket}, kind: socket, size: \${4:10 mm} }
consumables:
  \${5:assembly-oil}: { name: \${6:assembly oil}, kind: oil }
$0`;

const PROCEDURE = `# A procedure: phases and steps, for every build that the family allows.
witnessmark: 1
procedure: \${1:OP-100}
title: \${2:Title of the procedure}
revision: \${3:A}
status: draft
family: \${4:../families/my-unit.family.yaml}
prepared-by: \${5:Name}
before-you-start:
  - warning: \${6:Obey the local regulations and the data of the maker. Only an authorised person may do this work.}
phases:
  - phase: \${7:Receive}
    steps:
      - step: \${8:receive-unit}
        title: \${9:Record the unit as received}
        do:
          - check: The variant on the plate is the variant on this sheet.
            if-not: { reject: true }
          - record: \${10:Serial numbers, order number and hours of service}
$0`;

const SETTINGS = `# Settings for every document in this folder and below; editor and command line read them.
witnessmark: 1
units:
  torque: [\${1|N·m,lbf·in|}, \${2|lbf·in,N·m|}]
  length: [\${3|mm,in|}, \${4|in,mm|}]
paper: \${5|a4,letter|}
language: \${6|en,de,es|}
$0`;

/** The one place where the text of a new document is written. */
export const DOCUMENT_TEMPLATES: Readonly<Record<TemplateKind, DocumentTemplate>> = {
  family: { snippet: FAMILY, answers: { id: 1, name: 2 } },
  kit: { snippet: KIT, answers: { id: 1, name: 2, family: 4, part: 5 } },
  stores: { snippet: STORES, answers: { id: 1 } },
  procedure: { snippet: PROCEDURE, answers: { id: 1, name: 2, family: 4 } },
  settings: { snippet: SETTINGS, answers: {} },
};
