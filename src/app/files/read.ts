import { SECTIONS } from '../../machine/exchange';
import { called } from '../../machine/exchange-plan';
import {
  parseFile,
  readValueSteps,
  textTrouble,
  tooLarge,
  type FileRead,
  type GoodFile,
  type RefusedRecord,
} from '../../machine/exchange-read';
import { isPlain } from '../../machine/plain';
import type { StoredRecord } from '../../machine/schema';
import { goOn, inSlices, partOf, type Watch } from '../../machine/steps';
import { redrawn } from '../desk/photo';
import say from './words/en';

/** What the worker is asked: how many records of each list go into one message. */
export interface Task {
  readonly file: Blob;
  readonly parts: Readonly<Record<string, number>>;
}

/** What the worker says of a file: its JSON with the lists taken out, then their records part by part. */
export type Parsed =
  | { readonly kind: 'value'; readonly value: unknown }
  | { readonly kind: 'items'; readonly list: string; readonly items: readonly unknown[] }
  | { readonly kind: 'end' };

/** Few enough that no message holds the page up; photos are heavy. */
const PART = 200;
const PHOTOS = 4;
const { photo, machine, reading, draft, case: repair } = SECTIONS;
const PARTS: Task['parts'] = { [photo]: PHOTOS, [machine]: PART, [reading]: PART, [draft]: PART, [repair]: PART };

/** Below this a text is parsed faster than a worker starts. Bytes. */
const SMALL = 500_000;

type Found = { readonly value: unknown } | { readonly reason: string };

async function parsedHere(file: Blob): Promise<Found> {
  const text = await file.text();
  const reason = textTrouble(text);
  return reason === undefined ? { value: parseFile(text) } : { reason };
}

/** Parses in a worker; rejects where there is none to be had. @throws Cancelled */
function parsedApart(file: Blob, watch: Watch): Promise<Found> {
  const worker = new Worker(new URL('./parse-worker.ts', import.meta.url), { type: 'module' });
  const lists = new Map<string, unknown[]>();
  let value: unknown;
  const found = new Promise<Found>((resolve, reject) => {
    watch.signal.addEventListener('abort', () => resolve({ value: undefined }), { once: true });
    worker.onerror = () => reject(new Error('no worker'));
    worker.onmessage = ({ data }: MessageEvent<Parsed>) => {
      if (data.kind === 'items') {
        const list = lists.get(data.list);
        if (list) list.push(...data.items);
        else lists.set(data.list, [...data.items]);
      } else if (data.kind === 'end')
        resolve({ value: { ...(isPlain(value) ? value : {}), ...Object.fromEntries(lists) } });
      else if (isPlain(data.value)) value = data.value;
      else resolve(data);
    };
    worker.postMessage({ file, parts: PARTS } satisfies Task);
  });
  return found
    .finally(() => worker.terminate())
    .then((one) => {
      goOn(watch);
      return one;
    });
}

async function parsed(file: Blob, watch: Watch): Promise<Found> {
  if (file.size <= SMALL) return parsedHere(file);
  try {
    return await parsedApart(file, watch);
  } catch {
    goOn(watch);
    return parsedHere(file);
  }
}

/** Every picture as one taken here: without place and camera. One that cannot be opened is refused. @throws Cancelled */
async function withPicturesRedrawn(file: GoodFile, watch: Watch | undefined): Promise<GoodFile> {
  const records: StoredRecord[] = [];
  const refused: RefusedRecord[] = [...file.refused];
  for (const [i, record] of file.records.entries()) {
    if (record.type !== 'photo') {
      records.push(record);
      continue;
    }
    goOn(watch);
    watch?.tell(i / file.records.length);
    const picture = await redrawn(record);
    if (typeof picture === 'string') refused.push({ what: called(record), reason: picture });
    else records.push({ ...record, ...picture });
  }
  return { ...file, records, refused };
}

/**
 * Reads the file that was chosen, without holding the page up.
 * @throws Cancelled
 */
export async function readChosen(file: Blob, watch: Watch): Promise<FileRead> {
  const large = tooLarge(file.size);
  if (large !== undefined) return { ok: false, reason: large };
  let found: Found;
  try {
    found = await parsed(file, watch);
  } catch {
    goOn(watch);
    return { ok: false, reason: say.takeIn.notOpened };
  }
  if ('reason' in found) return { ok: false, reason: found.reason };
  const read = await inSlices(readValueSteps(found.value), partOf(watch, 0.1, 0.9));
  return read.ok ? withPicturesRedrawn(read, partOf(watch, 0.9, 1)) : read;
}
