export const COMMITS: readonly { readonly subject: string; readonly told: readonly (readonly string[])[] }[];
export function makeSampleHistory(folder: string): void;
