/*
 * The outer form of Trammel's file, by itself: the rescue, which comes up where the app did not, writes it too.
 */

export const FORMAT = 'trammel';
/** Version of the file's outer form; each record carries its own. */
export const FORMAT_VERSION = 1;
/** What a file may hold at most, to be read on a phone. */
export const FILE_LIMITS = { bytes: 64 * 1024 * 1024, records: 50_000 } as const;

/** Where each kind of record stands in the file. */
export const SECTIONS = {
  machine: 'machines',
  reading: 'readings',
  photo: 'photos',
  draft: 'drafts',
  typed: 'typed',
  case: 'cases',
  settings: 'settings',
} as const;
