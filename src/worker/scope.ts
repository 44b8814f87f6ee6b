/*
 * What a service worker finds around it, as far as ours uses it: the compiler's own library for workers cannot stand in one
 * program with that for pages.
 */

export interface WindowClient {
  readonly postMessage: (message: unknown) => void;
}

interface Lasting {
  readonly waitUntil: (work: Promise<unknown>) => void;
}

interface Events {
  readonly install: Lasting;
  readonly activate: Lasting;
  readonly message: Lasting & { readonly data: unknown };
  readonly fetch: { readonly request: Request; readonly respondWith: (response: Promise<Response>) => void };
}

export interface Scope {
  readonly registration: ServiceWorkerRegistration;
  readonly clients: {
    readonly matchAll: (which: { type: 'window'; includeUncontrolled: true }) => Promise<readonly WindowClient[]>;
    readonly claim: () => Promise<void>;
  };
  readonly skipWaiting: () => Promise<void>;
  readonly addEventListener: <K extends keyof Events>(type: K, listener: (event: Events[K]) => void) => void;
}
