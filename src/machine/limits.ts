/** Longest texts and largest maps a record may hold: for the fields' `maxlength` as well. */
export const LIMITS = {
  id: 64,
  name: 120,
  note: 4000,
  typed: 120,
  line: 600,
  /** An instruction or a step of it in words: with many amounts, and under every option. */
  told: 4000,
  steps: 40,
  map: 400,
  limits: 40,
  /** Levels and values of what an instruction's words are made from. */
  argDepth: 8,
  args: 1000,
  /** Entries of a case. */
  log: 300,
  /** Things done to one machine. */
  ordinal: 999_999_999_999,
  /** Days between two readings of a check. */
  days: 3650,
  /** Pixels of a photo along its longer side. */
  photoSide: 1280,
  /** Characters of a photo in base64: 900 kB of picture. */
  photo: 1_200_000,
} as const;
