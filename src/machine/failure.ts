import say from './words/en';

/**
 * What went wrong with the keeping of records. The first four lie with the browser's storage and say that something is
 * not kept; the others concern one record only.
 */
export type FailureKind = 'missing' | 'blocked' | 'full' | 'other' | 'unreadable' | 'newer' | 'refused';

export interface Failure {
  readonly ok: false;
  readonly kind: FailureKind;
  /** Sentences for the person. */
  readonly reason: string;
}

export type Stored<T> = { readonly ok: true; readonly value: T } | Failure;

export const done = <T>(value: T): Stored<T> => ({ ok: true, value });

export const failed = (kind: FailureKind, reason: string): Failure => ({ ok: false, kind, reason });

/** Thrown inside a transaction to undo it and hand the failure to the caller. */
export class Refusal extends Error {
  constructor(readonly failure: Failure) {
    super(failure.reason);
  }
}

/** True for a failure of the storage itself, after which nothing is kept until it works again. */
export function isStorageFailure(failure: Failure): boolean {
  return ['missing', 'blocked', 'full', 'other'].includes(failure.kind);
}

/** Name of the error our own time limit raises; the browser has none for an open that is held up. */
export const HELD_UP = 'TimeoutError';

const nameOf = (error: unknown): string => (error instanceof Error || error instanceof DOMException ? error.name : '');

/** False where asking again cannot help: no storage at all (the name `indexedDB` unknown, or barred), or no room. */
export function mayPass(error: unknown): boolean {
  return !['ReferenceError', 'TypeError', 'SecurityError', 'QuotaExceededError'].includes(nameOf(error));
}

/** True for an error of the browser's storage, false for a mistake of ours. */
export function isStorageError(error: unknown): boolean {
  // An aborted transaction may have no error of its own.
  return error === null || error instanceof DOMException;
}

/** The storage's error as sentences for the person. */
export function explainError(error: unknown): Failure {
  switch (nameOf(error)) {
    case 'QuotaExceededError':
      return failed('full', say.store.full);
    case HELD_UP:
      return failed('blocked', say.store.heldUp);
    // A private window: `indexedDB` is absent, barred, or opens only for reading, depending on the browser.
    case 'ReferenceError':
    case 'TypeError':
    case 'SecurityError':
    case 'InvalidStateError':
      return failed('missing', say.store.missing);
    default: {
      const words = error instanceof Error || error instanceof DOMException ? error.message : '';
      return failed('other', words === '' ? say.store.failed : say.store.failedWith(words));
    }
  }
}

/** `kept`, or why not: `failing` until it works again, `not kept` until the page is opened anew. */
export type StorageState =
  { readonly kind: 'kept' } | { readonly kind: 'failing' | 'not kept'; readonly failure: Failure };
