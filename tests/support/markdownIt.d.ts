// What is used of a reader of Markdown that brings no types of its own.
declare module 'markdown-it' {
  interface Token {
    readonly type: string;
    readonly tag: string;
    readonly nesting: number;
    readonly content: string;
    readonly children: readonly Token[] | null;
  }
  export default class MarkdownIt {
    constructor(options: { readonly html: boolean });
    parse(markdown: string, environment: object): Token[];
  }
}
