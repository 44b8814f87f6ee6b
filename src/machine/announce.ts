/** Keys written, and whether another tab wrote them. */
export interface Change {
  readonly keys: readonly string[];
  readonly elsewhere: boolean;
}

/** Tells this tab and the others which keys have changed. */
export interface Announcer {
  say(keys: readonly string[]): void;
  subscribe(listener: (change: Change) => void): () => void;
  close(): void;
}

/** Undefined where the browser has none: then other tabs see a change when they next read. */
export function openChannel(): BroadcastChannel | undefined {
  return typeof BroadcastChannel === 'undefined' ? undefined : new BroadcastChannel('trammel');
}

function keysIn(message: unknown): readonly string[] | undefined {
  if (!Array.isArray(message)) return undefined;
  const keys = message.filter((key) => typeof key === 'string');
  return keys.length === message.length ? keys : undefined;
}

export function announcer(channel: BroadcastChannel | undefined): Announcer {
  const listeners = new Set<(change: Change) => void>();
  let closed = false;
  const tell = (change: Change) => {
    for (const listener of [...listeners]) listener(change);
  };
  const heard = (event: MessageEvent<unknown>) => {
    const keys = keysIn(event.data);
    if (keys) tell({ keys, elsewhere: true });
  };
  channel?.addEventListener('message', heard);
  return {
    say(keys) {
      // A write may end after the store was closed.
      if (closed || keys.length === 0) return;
      channel?.postMessage(keys);
      tell({ keys, elsewhere: false });
    },
    subscribe(listener) {
      listeners.add(listener);
      return () => void listeners.delete(listener);
    },
    close() {
      closed = true;
      channel?.removeEventListener('message', heard);
      channel?.close();
      listeners.clear();
    },
  };
}
