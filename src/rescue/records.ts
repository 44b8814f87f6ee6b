import { FILE_LIMITS, FORMAT, FORMAT_VERSION, OF_ONE_DEVICE, SECTIONS } from '../machine/exchange-form';

const DATABASE = 'trammel';
const RECORDS = 'records';

type Entry = readonly [key: string, value: unknown];

const isType = (type: string): type is keyof typeof SECTIONS => Object.keys(SECTIONS).includes(type);

/**
 * Everything that the database holds, without the app's own code.
 * @returns undefined where there is no database: none is made
 * @throws DOMException of the browser
 */
export function readEverything(factory: IDBFactory): Promise<readonly Entry[] | undefined> {
  return new Promise((resolve, reject) => {
    const open = factory.open(DATABASE);
    const fail = (): void => reject(open.error ?? new DOMException(DATABASE, 'UnknownError'));
    open.onupgradeneeded = () => open.transaction?.abort();
    open.onblocked = fail;
    open.onerror = () => (open.error?.name === 'AbortError' ? resolve(undefined) : fail());
    open.onsuccess = () => {
      const database = open.result;
      if (!database.objectStoreNames.contains(RECORDS)) {
        resolve(undefined);
        return;
      }
      const found: Entry[] = [];
      const walk = database.transaction(RECORDS).objectStore(RECORDS).openCursor();
      walk.onerror = () => reject(walk.error ?? new DOMException(RECORDS, 'UnknownError'));
      walk.onsuccess = () => {
        const cursor = walk.result;
        if (!cursor) {
          database.close();
          resolve(found);
          return;
        }
        if (typeof cursor.key === 'string') found.push([cursor.key, cursor.value]);
        cursor.continue();
      };
    };
  });
}

/** Where the record of a key belongs, and the record: what was set aside goes back to where it was found, for the app to say what ails it. */
function placed([key, value]: Entry): { readonly type: keyof typeof SECTIONS; readonly text: string } | undefined {
  if (key.startsWith('aside:')) {
    const { key: from = '', stored } = value as { readonly key?: string; readonly stored?: unknown };
    return from.startsWith('aside:') ? undefined : placed([from, stored]);
  }
  const type = key.split(':', 1)[0] ?? '';
  if (!isType(type)) return undefined;
  const portable = type === 'settings' ? { ...(value as object), ...OF_ONE_DEVICE } : value;
  return { type, text: JSON.stringify(portable ?? null) };
}

/**
 * Files of everything, as the app reads them in; more than one where the app would refuse one so large.
 * @param made ISO 8601
 */
export function filesOf(
  entries: readonly Entry[],
  made: string,
): { readonly texts: string[]; readonly records: number } {
  const all = entries.flatMap((entry) => placed(entry) ?? []);
  const texts: string[] = [];
  let part: typeof all = [];
  let size = 0;
  const close = (): void => {
    const of = (type: string) => part.filter((one) => one.type === type).map(({ text }) => text);
    const lists = Object.entries(SECTIONS)
      .filter(([type]) => type !== 'settings')
      .map(([type, name]) => `"${name}": [\n${of(type).join(',\n')}\n]`);
    const settings = of('settings')
      .map((text) => `"${SECTIONS.settings}": ${text}`)
      .slice(0, 1);
    const head = [`"format": "${FORMAT}"`, `"v": ${FORMAT_VERSION}`, `"made": "${made}"`];
    texts.push(`{\n${[...head, ...lists, ...settings].join(',\n')}\n}\n`);
    part = [];
    size = 0;
  };
  for (const one of all) {
    // A sign takes up to three bytes, which the limit counts.
    const bytes = 3 * one.text.length + 2;
    if (part.length > 0 && (size + bytes > FILE_LIMITS.bytes / 2 || part.length >= FILE_LIMITS.records)) close();
    part.push(one);
    size += bytes;
  }
  if (part.length > 0) close();
  return { texts, records: all.length };
}
