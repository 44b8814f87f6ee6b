import { describe, expect, it } from 'vitest';
import { isAsDrawnHere } from '../../src/app/desk/jpeg';

const segment = (marker: number, ...bytes: readonly number[]) => [0xff, marker, 0, bytes.length + 2, ...bytes];
const JFIF = segment(0xe0, ...Buffer.from('JFIF\0'), 1, 1, 0, 0, 1, 0, 1, 0, 0);
// The order of ITU-T T.81, figure B.2: tables, frame, tables, scan head, coded data with a stuffed byte and a restart, end.
const FRAME = [...segment(0xdb, 0, 1), ...segment(0xc0, 8, 0, 1, 0, 1, 1, 1, 17, 0), ...segment(0xc4, 0, 1)];
const SCAN = [...segment(0xda, 1, 1, 0, 0, 63, 0), 1, 0xff, 0, 2, 0xff, 0xd0, 3];
const START = [0xff, 0xd8];
const END = [0xff, 0xd9];
const bytes = (...parts: readonly (readonly number[])[]) => Uint8Array.from(parts.flat());

const PROFILE = segment(0xe2, 73, 67, 67);
const own = bytes(START, JFIF, PROFILE, FRAME, SCAN, END);

describe('a JPEG that holds nothing beside its picture but what one drawn here does', () => {
  it.each([
    ['with a JFIF head', bytes(START, JFIF, FRAME, SCAN, END)],
    ['without one', bytes(START, FRAME, SCAN, END)],
    ['of several scans', bytes(START, JFIF, FRAME, SCAN, segment(0xc4, 0, 1), SCAN, END)],
    ['with the profile of one', bytes(START, JFIF, PROFILE, FRAME, SCAN, END)],
  ])('%s is as drawn here', (_, picture) => {
    expect(isAsDrawnHere(picture, own)).toBe(true);
  });

  it.each([
    ['camera and place (Exif, APP1)', bytes(START, segment(0xe1, 69, 120, 105, 102), FRAME, SCAN, END)],
    ['them after a JFIF head', bytes(START, JFIF, segment(0xe1, 69, 120, 105, 102), FRAME, SCAN, END)],
    ['them between two scans', bytes(START, JFIF, FRAME, SCAN, segment(0xe1, 69, 120, 105, 102), SCAN, END)],
    ['a comment', bytes(START, JFIF, segment(0xfe, 72, 105), FRAME, SCAN, END)],
    [
      'a small picture in its head',
      bytes(START, segment(0xe0, ...Array.from({ length: 40 }, () => 1)), FRAME, SCAN, END),
    ],
    ['another profile of its colours', bytes(START, JFIF, segment(0xe2, 1), FRAME, SCAN, END)],
    ['something after its end', bytes(START, JFIF, FRAME, SCAN, END, [1])],
    ['no end', bytes(START, JFIF, FRAME, SCAN)],
    ['no picture', bytes([0x89, 0x50, 0x4e, 0x47])],
  ])('with %s it is not', (_, picture) => {
    expect(isAsDrawnHere(picture, own)).toBe(false);
  });
});
