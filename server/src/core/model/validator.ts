/** An error of a compiled validator. */
export interface ValidationError {
  /** JSON pointer to the value within what was validated. */
  readonly instancePath: string;
  readonly keyword: string;
  readonly schemaPath: string;
  readonly params: Readonly<Record<string, unknown>>;
}

/** A compiled validator: true where all is well, else `errors` tells until the next call. */
export interface Validator {
  (value: unknown): boolean;
  errors?: readonly ValidationError[] | null;
}
