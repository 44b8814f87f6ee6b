/** A file of a build: its address below the scope, and the SHA-256 of its content in base64. */
export interface BuildFile {
  readonly url: string;
  readonly hash: string;
}

/** Why a file of the build is not in the copy. */
export type Fault = 'unreachable' | 'not there' | 'wrong type' | 'wrong content' | 'no room';

/** How far the offline copy is: what the worker tells every page. */
export type Stage =
  | { readonly kind: 'coming'; readonly have: number; readonly of: number }
  | { readonly kind: 'whole'; readonly have: number; readonly of: number }
  | { readonly kind: 'failed'; readonly have: number; readonly of: number; readonly file: string; readonly why: Fault };

/** What a page asks of the worker. The first is what pages of earlier versions say, too. */
export type Asked = { readonly type: 'SKIP_WAITING' } | { readonly type: 'CHECK' };

/** What the worker says to a page. */
export interface Told {
  readonly type: 'STAGE';
  readonly stage: Stage;
}

/** Held by a page as a lock for as long as it is open: which entry script it runs, and so which release it may still ask for. */
export const LOCK = 'trammel-page:';

export function isTold(message: unknown): message is Told {
  return typeof message === 'object' && message !== null && 'type' in message && message.type === 'STAGE';
}
