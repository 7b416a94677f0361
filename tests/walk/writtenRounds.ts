/** A sample procedure over and over, so that it has as many steps; each with an id of its own, loops within their round. */
export function writtenRounds(text: string, steps: number): string {
  const chunks = text.split(/(?=^ {6}- step: )/m);
  const bodies = chunks.slice(1).map((chunk) => chunk.split(/^ {2}- phase:/m)[0] ?? chunk);
  const written = Array.from({ length: steps }, (_, i) => {
    const round = Math.floor(i / bodies.length);
    return (bodies[i % bodies.length] ?? '').replace(/(- step: |go-to: )([a-z0-9-]+)/g, `$1$2-${round}`);
  });
  return (chunks[0] ?? '') + written.join('');
}

const STEP = /(?=^ {6}- step: )/m;

/**
 * One change as a writer makes it in the steps: in a value, of an instruction, of a whole step, of what a loop goes back
 * to; now and then one that tears the text, or one in many steps at once.
 */
export function editOfSteps(text: string, random: () => number): string {
  const chunks = text.split(STEP);
  const count = chunks.length - 1;
  const any = (): number => 1 + Math.floor(random() * count);
  const at = any();
  const change = (to: (step: string) => string): string => {
    chunks[at] = to(chunks[at] ?? '');
    return chunks.join('');
  };
  const put = (step: string, place: number): string => {
    chunks.splice(place, 0, step);
    return chunks.join('');
  };
  const without = (steps: number): string => {
    chunks.splice(at, steps);
    return chunks.join('');
  };
  const idOf = (place: number): string => /- step: (\S+)/.exec(chunks[place] ?? '')?.[1] ?? 'nowhere';
  const kinds: (() => string)[] = [
    () => change((step) => typedInValue(step, random)),
    () => change((step) => typedInValue(step, random)),
    () => change((step) => withoutInstruction(step, random)),
    () => change((step) => step.replace(/title: /, 'title: "')),
    () => chunks.join('').replace(/title: "(.*[^"])$/gm, 'title: $1'),
    () => change((step) => step.replace(/\n/, '\n        optional: true\n')),
    () => change((step) => step.replace(/\n/, '\n        when: big-wheel\n')),
    () => change((step) => step.replace(/- step: \S+/, `- step: ${idOf(any())}`)),
    () =>
      change((step) => `${step}          - check: The parts are dry\n            if-not: { go-to: ${idOf(any())} }\n`),
    () =>
      change(
        (step) =>
          `${step}          - check: It runs\n            if-not: { do: [ { remove: cover } ], reject: true }\n`,
      ),
    () => change((step) => step.replace(/(- remove: )(.*)/, '$1$2 # slowly')),
    () => put(chunks[at] ?? '', any()),
    () => put(chunks[at] ?? '', at),
    () => put(chunks.splice(at, 1)[0] ?? '', any()),
    () => put(chunks.splice(at, 1)[0] ?? '', Math.min(count, at + 1)),
    () => without(1 + Math.floor(random() * 3)),
    () => without(Math.floor(count / 3)),
    () => chunks.map((step, i) => (i > 0 && i % 7 === at % 7 ? typedInValue(step, random) : step)).join(''),
  ];
  return (kinds[Math.floor(random() * kinds.length)] ?? (() => text))();
}

function typedInValue(step: string, random: () => number): string {
  const values = [...step.matchAll(/: (?=[a-z0-9])/g)];
  const match = values[Math.floor(random() * values.length)];
  if (match === undefined) return step;
  const place = match.index + 2 + Math.floor(random() * 2);
  return step.slice(0, place) + (random() < 0.5 ? 'x' : '1') + step.slice(place + (random() < 0.3 ? 1 : 0));
}

function withoutInstruction(step: string, random: () => number): string {
  const parts = step.split(/(?=^ {10}- )/m);
  if (parts.length > 2) parts.splice(1 + Math.floor(random() * (parts.length - 1)), 1);
  return parts.join('');
}
