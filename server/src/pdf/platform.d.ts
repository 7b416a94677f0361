// What Node and browsers both have, and the language's own library has not.

declare class TextEncoder {
  encode(text: string): Uint8Array;
}
