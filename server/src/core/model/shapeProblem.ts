import type { ItemRange, MapNode, Node } from '../syntax/node';

/** What is wrong with the shape of a document: keys and kinds of value, before any meaning. */
export type ShapeProblem =
  | {
      readonly kind: 'key-unknown';
      readonly range: ItemRange;
      readonly key: string;
      readonly near: readonly string[];
      readonly owner: string;
    }
  | { readonly kind: 'second-verb'; readonly range: ItemRange; readonly key: string; readonly verb: string }
  | {
      readonly kind: 'key-missing';
      readonly range: ItemRange;
      readonly key: string;
      readonly owner: string;
      readonly node: Node;
    }
  | { readonly kind: 'verb-missing'; readonly range: ItemRange }
  | { readonly kind: 'duplicate-key'; readonly range: ItemRange; readonly key: string; readonly declares: boolean }
  | { readonly kind: 'empty'; readonly range: ItemRange; readonly key: string }
  | { readonly kind: 'prose-became-map'; readonly range: ItemRange; readonly node: MapNode }
  | { readonly kind: 'cut-at-comma'; readonly range: ItemRange; readonly key: string }
  | {
      readonly kind: 'wrong-kind';
      readonly range: ItemRange;
      readonly key: string;
      readonly found: 'text' | 'list' | 'map';
      readonly wanted: string;
    }
  | {
      readonly kind: 'wrong-choice';
      readonly range: ItemRange;
      readonly text: string;
      readonly choices: readonly string[];
      readonly near: readonly string[];
    }
  | {
      readonly kind: 'wrong-flag';
      readonly range: ItemRange;
      readonly text: string;
      readonly meant: 'true' | 'false' | undefined;
    }
  | { readonly kind: 'wrong-count'; readonly range: ItemRange; readonly text: string; readonly key: string }
  | { readonly kind: 'wrong-date'; readonly range: ItemRange; readonly text: string }
  | { readonly kind: 'wrong-id'; readonly range: ItemRange; readonly text: string }
  | { readonly kind: 'wrong-version'; readonly range: ItemRange; readonly text: string }
  | { readonly kind: 'wrong-text'; readonly range: ItemRange; readonly text: string; readonly key: string };
