/** @param inlineHash of the one script in the page itself: `sha256-…` */
export function policy(inlineHash: string): string;
export const everywhere: Readonly<Record<string, string>>;
/** @param file its path below the build's folder */
export function caching(file: string): string;
/** @param file its path below the build's folder */
export function headersOf(file: string): Readonly<Record<string, string>>;
