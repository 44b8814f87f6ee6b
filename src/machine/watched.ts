import type { Backend } from './database';
import { isStorageFailure, type StorageState } from './failure';

/** Passes every result through, and tells when keeping begins to fail or works again. */
export function watched(backend: Backend, tell: (state: StorageState) => void): Backend {
  let writesFail = false;
  return {
    async run(mode, body) {
      const result = await backend.run(mode, body);
      const writing = mode === 'readwrite';
      // A full store can still be read: only a write shows that there is room again.
      if (result.ok && (writing || !writesFail)) {
        writesFail = false;
        tell({ kind: 'kept' });
      } else if (!result.ok && isStorageFailure(result)) {
        writesFail ||= writing;
        tell({ kind: 'failing', failure: result });
      }
      return result;
    },
  };
}
