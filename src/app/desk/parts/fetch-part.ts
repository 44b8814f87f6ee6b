/** A part of the app that did not come. It knows how to ask again. */
export class NotFetched extends Error {
  override readonly name = 'NotFetched';

  constructor(
    /** Asks for it again; rejects where it still does not come. */
    readonly again: () => Promise<unknown>,
    override readonly cause: unknown,
  ) {
    super(String(cause));
  }
}

/** Asks past what the browser itself keeps: a wrong answer may stand there under a name that is kept for ever. */
const renew = (address: string): Promise<unknown> => fetch(address, { cache: 'reload' }).catch(() => undefined);

/** Styles that did not come are asked for again: the build's own loader asks for each once only. */
async function mendStyles(): Promise<void> {
  const broken = [...document.querySelectorAll<HTMLLinkElement>('link[rel="stylesheet"]')].filter(
    ({ sheet }) => !sheet,
  );
  const mend = async (link: HTMLLinkElement): Promise<void> => {
    await renew(link.href);
    const fresh = document.createElement('link');
    const settled = new Promise((resolve, reject) => {
      fresh.onload = resolve;
      fresh.onerror = reject;
    });
    fresh.rel = 'stylesheet';
    fresh.href = link.href;
    link.replaceWith(fresh);
    await settled;
  };
  await Promise.all(broken.map(mend));
}

async function askAgain<T>(load: () => Promise<T>, cause: unknown): Promise<T> {
  const [address] = /https?:\S+\.(js|css)\b/.exec(String(cause)) ?? [];
  if (address !== undefined) await renew(address);
  await mendStyles();
  return load();
}

/**
 * The one door for every part of the app that is fetched when it is asked for.
 * @throws NotFetched
 */
export async function fetchPart<T>(load: () => Promise<T>): Promise<T> {
  try {
    return await load();
  } catch (cause) {
    throw new NotFetched(() => askAgain(load, cause), cause);
  }
}

/** Whether the page itself could be had now, from the copy or from the host: else to load it anew would end on a page of the browser's. */
export async function pageCanBeHad(): Promise<boolean> {
  try {
    const response = await fetch(location.pathname, { cache: 'no-cache' });
    return response.ok && (await response.text()).includes('<div id="app">');
  } catch {
    return false;
  }
}
