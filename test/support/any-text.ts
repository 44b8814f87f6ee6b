import fc from 'fast-check';

const isHalf = (code: number): boolean => code >= 0xd800 && code <= 0xdfff;

/** Text of any code points at all but halves of pairs. fast-check's own spends a second on getting ready. */
export const anyText = (maxLength: number): fc.Arbitrary<string> =>
  fc
    .array(
      fc.integer({ min: 0, max: 0x10ffff }).filter((code) => !isHalf(code)),
      { maxLength },
    )
    .map((codes) => String.fromCodePoint(...codes));
