// What Node and browsers both have, and the language's own library has not.

declare class TextEncoder {
  encode(text: string): Uint8Array;
}

declare class TextDecoder {
  decode(bytes: Uint8Array): string;
}
