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

/** What settings say of one device alone, as a file has it: else no two files of the same records would be alike. */
export const OF_ONE_DEVICE = { lastExport: null, persistAsked: null } as const;
