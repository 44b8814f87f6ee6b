import fc from 'fast-check';
import { expect, test } from 'vitest';
import { mended } from '../../src/app/shell/address';
import { anyText } from '../support/any-text';
import { times } from '../support/sweep';

/** Held against the platform's own readers: `decodeURI` (ECMA-262) and `URL` (WHATWG), with which every router reads. */
function readable(fragment: string): void {
  const path = mended(fragment).split('?')[0]!;
  expect(() => decodeURI(path)).not.toThrow();
  const url = new URL(mended(fragment), 'http://here');
  expect(url.host).toBe('here');
  expect(path).not.toContain('//');
  expect(mended(mended(fragment))).toBe(mended(fragment));
}

test.each([
  '%',
  '/%',
  '//',
  '///x',
  '/\\x',
  '/%E0%A4%A',
  '/%FF',
  '/check/%00',
  '?%',
  '/a?b=%',
  '',
  '/check/50%25',
  'x',
  '/é/ü',
])('the address %o can be read', readable);

test('every address can be read, whatever stands in it', () => {
  const piece = fc.oneof(
    fc.constantFrom('%', '/', '\\', '?', '#', '%2', '%zz', '%C3', ':', '@', '.', '..', '\u0000'),
    anyText(10),
  );
  fc.assert(
    fc.property(fc.array(piece, { maxLength: 12 }), (pieces) => readable(pieces.join(''))),
    { numRuns: times(2000, 200) },
  );
});

test('an address that can be read already stays as it is', () => {
  for (const fine of ['/', '/check/bed-tram?x=%25&y=1%2F2', '/machines/a%20b', '/case/link?c=ab%3D'])
    expect(mended(fine)).toBe(fine);
});
