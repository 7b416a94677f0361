import type { Answer, DocumentTemplate } from './documentTemplates';

/** What a person has answered, as it was typed. */
export type Answers = Readonly<Partial<Record<Answer, string>>>;

const PLACEHOLDER = /\$\{(\d+):((?:\\.|[^\\}])*)\}/g;
const CHOICE = /\$\{\d+\|([^,|]*)(?:,[^|]*)?\|\}/g;

/** The snippet with the answers in place of what its placeholders hold. They stay placeholders, to be written over. */
export function fillTemplate({ snippet, answers: places }: DocumentTemplate, answers: Answers): string {
  const byNumber = new Map(
    Object.entries(answers).flatMap(([name, text]) => {
      const number = places[name as Answer];
      return number === undefined || text === '' ? [] : [[number, text] as const];
    }),
  );
  return snippet.replaceAll(PLACEHOLDER, (whole, number: string) => {
    const answer = byNumber.get(Number(number));
    return answer === undefined ? whole : `\${${number}:${escaped(asValue(answer))}}`;
  });
}

/** The document that a snippet gives where every placeholder is left as it is. */
export function plainDocument(snippet: string): string {
  return snippet
    .replaceAll(PLACEHOLDER, (_, _number: string, text: string) => text.replaceAll(/\\(.)/g, '$1'))
    .replaceAll(CHOICE, '$1')
    .replaceAll(/\$\d+$/gm, '');
}

/** A text as a YAML value that says the same: in quotes where something in it would mean more than itself. */
export function asValue(text: string): string {
  return /^[\p{L}\p{N}.][\p{L}\p{M}\p{N} ._/()+-]*$/u.test(text) && !text.endsWith(' ') ? text : JSON.stringify(text);
}

function escaped(text: string): string {
  return text.replaceAll(/[\\$}]/g, '\\$&');
}
