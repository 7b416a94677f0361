/** A `preview` is followed with caret and keys, and its parts carry where they come from; a `file` may leave the house. */
export type DrawMode = 'preview' | 'file';

type Attributes = Readonly<Record<string, string | number | undefined>>;

/** Attributes that only a preview carries. */
export function ofPreview(mode: DrawMode, attributes: Attributes): Attributes {
  return mode === 'preview' ? attributes : {};
}
