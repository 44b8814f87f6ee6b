/** Whether the browser may clear what is kept when it wants room. */
export type Lasting = 'yes' | 'may be cleared' | 'not known';

/** What the browser gives this site; undefined where it does not say. Bytes. */
export interface Room {
  readonly used: number;
  readonly free: number;
}

/** Absent in old browsers and on origins that are not secure. */
const manager = (): Partial<StorageManager> | undefined => (navigator as Partial<Navigator>).storage;

/** @throws never: a browser that refuses to answer has not promised anything */
export async function lasting(): Promise<Lasting> {
  try {
    const persisted = await manager()?.persisted?.();
    return persisted === undefined ? 'not known' : persisted ? 'yes' : 'may be cleared';
  } catch {
    return 'not known';
  }
}

/**
 * Asks the browser not to clear what is kept. Some browsers ask the person in turn: never call this as a page opens, only
 * when something worth keeping has just been kept, or when the person asks for it.
 * @throws never
 */
export async function askToPersist(): Promise<Lasting> {
  try {
    if ((await lasting()) === 'may be cleared') await manager()?.persist?.();
  } catch {
    // No promise then; `lasting` says so.
  }
  return lasting();
}

/** @throws never */
export async function room(): Promise<Room | undefined> {
  try {
    const { usage, quota } = (await manager()?.estimate?.()) ?? {};
    return usage === undefined || quota === undefined ? undefined : { used: usage, free: Math.max(0, quota - usage) };
  } catch {
    return undefined;
  }
}
