/** Every character that the faces hold. */
export const WHAT: string;
/** The faces cut down to it, woff2. */
export function faces(): Promise<{ name: string; bytes: Uint8Array }[]>;
