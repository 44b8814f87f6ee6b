import { FILE_LIMITS, writeFileSteps } from '../../machine/exchange';
import { writeCsvSteps } from '../../machine/exchange-csv';
import { gather, type Scope } from '../../machine/exchange-store';
import type { StoredRecord } from '../../machine/schema';
import { inSlices, partOf, type Watch } from '../../machine/steps';
import type { Store } from '../../machine/store';
import type { DecimalMark } from '../../quantity/parse';
import { explainAll } from '../desk/explain';
import say from './words/en';

export type Form = 'file' | 'csv';

export interface Wanted {
  readonly scope: Scope;
  /** What to call it in the file's name. */
  readonly called: string;
  readonly form: Form;
  readonly photos: boolean;
  /** Of numbers in a spreadsheet. */
  readonly mark: DecimalMark;
}

/** A file ready to be handed over. */
export interface Made {
  readonly wanted: Wanted;
  /** When the records were read. */
  readonly at: Date;
  readonly name: string;
  readonly blob: Blob;
  readonly counts: Readonly<Record<StoredRecord['type'], number>>;
  /** Records that cannot be read and are not in it. */
  readonly missing: number;
}

export type Making = { readonly ok: true; readonly made: Made } | { readonly ok: false; readonly reason: string };

/** The records with names in readings of an earlier version. */
async function named(records: readonly StoredRecord[], watch: Watch | undefined): Promise<readonly StoredRecord[]> {
  const readings = records.filter((one) => one.type === 'reading');
  return [...records.filter((one) => one.type !== 'reading'), ...(await explainAll(readings, watch))];
}

const plain = (words: string): string =>
  words
    .toLowerCase()
    .replaceAll(/[^\p{L}\p{N}]+/gu, '-')
    .replaceAll(/^-|-$/g, '')
    .slice(0, 40);

function count(records: readonly StoredRecord[]): Made['counts'] {
  const counts = { machine: 0, reading: 0, photo: 0, draft: 0, typed: 0, case: 0, settings: 0 };
  for (const { type } of records) counts[type] += 1;
  return counts;
}

const refused = (reason: string): Making => ({ ok: false, reason });

/** Says why a file of this size could not be taken in again; undefined where it could. */
function tooMuch(bytes: number, { machine, ...counts }: Made['counts']): string | undefined {
  const records = Object.values(counts).reduce((sum, n) => sum + n, machine);
  if (bytes <= FILE_LIMITS.bytes && records <= FILE_LIMITS.records) return undefined;
  return counts.photo > 0
    ? say.save.tooMuchWithPhotos(printSize(bytes), records)
    : say.save.tooMuch(printSize(bytes), records);
}

export function printSize(bytes: number): string {
  if (bytes < 1000) return say.save.bytes(bytes);
  if (bytes < 1e6) return say.save.kilobytes(Math.round(bytes / 1000));
  return say.save.megabytes((bytes / 1e6).toFixed(1));
}

/**
 * Reads the records and makes the file of them, or says why not.
 * @throws Cancelled
 */
export async function makeFile(store: Store, wanted: Wanted, watch: Watch): Promise<Making> {
  const at = new Date();
  const found = await gather(store, wanted.scope, partOf(watch, 0, 0.6));
  if (!found.ok) return refused(found.reason);
  const records = found.value.records.filter(({ type }) => wanted.photos || type !== 'photo');
  const counts = count(records);
  if (wanted.form === 'csv' && counts.reading === 0) return refused(say.save.noReadings);
  if (records.length === 0) return refused(say.save.nothing);
  const name = ['trammel', plain(wanted.called), at.toISOString().slice(0, 10)].filter(Boolean).join('-');
  const made = { wanted, at, counts, missing: found.value.unreadable.length };
  if (wanted.form === 'csv') {
    const all = await named(records, partOf(watch, 0.6, 0.7));
    const lines = await inSlices(writeCsvSteps(all, wanted.mark), partOf(watch, 0.7, 1));
    // The mark in front makes spreadsheets read the text as UTF-8: ° and µ are lost otherwise.
    const blob = new Blob(['\uFEFF', ...lines], { type: 'text/csv' });
    return { ok: true, made: { ...made, name: `${name}.csv`, blob } };
  }
  const pieces = await inSlices(writeFileSteps(records, at.toISOString()), partOf(watch, 0.6, 1));
  const blob = new Blob([...pieces], { type: 'application/json' });
  const reason = tooMuch(blob.size, counts);
  return reason === undefined ? { ok: true, made: { ...made, name: `${name}.json`, blob } } : refused(reason);
}

/**
 * The same file as phones let it be shared: several share no `.json`, all share text. Trammel reads it under any name.
 * Undefined where this device shares no files.
 */
export function shareable({ blob, name, wanted }: Made): File | undefined {
  const file =
    wanted.form === 'csv'
      ? new File([blob], name, { type: 'text/csv' })
      : new File([blob], name.replace(/json$/, 'txt'), { type: 'text/plain' });
  const device: Partial<Navigator> = navigator;
  return device.canShare?.({ files: [file] }) === true ? file : undefined;
}
