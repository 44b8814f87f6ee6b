import { describe, expect, it } from 'vitest';
import { REFUSAL, TROUBLE, meddlingSentence, whyApart } from '../../src/app/phone/note/note-words';
import { meddlingOf, troubleOf } from '../../src/instrument/microphone-trouble';

describe('why the microphone cannot be had', () => {
  // Names: W3C Media Capture and Streams, 10.2.2 (getUserMedia), from memory.
  it.each([
    ['NotAllowedError', 'refused'],
    ['SecurityError', 'refused'],
    ['NotFoundError', 'none'],
    ['OverconstrainedError', 'none'],
    ['NotReadableError', 'taken'],
    ['AbortError', 'taken'],
  ])('%s: %s', (name, trouble) => {
    expect(troubleOf(new DOMException('words of the browser', name))).toBe(trouble);
  });

  it('takes anything else for a fault, and a TypeError for an old browser', () => {
    expect(troubleOf(new TypeError('x'))).toBe('not supported');
    for (const odd of [new Error('x'), 'x', undefined, null, { name: 'toString' }])
      expect(troubleOf(odd)).toBe('failed');
  });

  it('is said in one sentence each, with its full stop', () => {
    for (const sentence of [...Object.values(TROUBLE), ...Object.values(REFUSAL).map(({ advice }) => advice)]) {
      expect(sentence).toMatch(/^[A-Z][^.]*\.$/);
    }
  });
});

describe('what a phone does to the sound although asked not to', () => {
  it('is read from the settings of the track', () => {
    expect(meddlingOf({ autoGainControl: false, noiseSuppression: false, echoCancellation: false })).toEqual([]);
    expect(meddlingOf({})).toEqual([]);
    expect(meddlingOf({ autoGainControl: true, noiseSuppression: true })).toEqual([
      'gain control',
      'noise suppression',
    ]);
    // Newer browsers say which echoes they cancel: "all", "remote-only".
    expect(meddlingOf({ echoCancellation: 'all' })).toEqual(['echo cancelling']);
  });

  it('is said', () => {
    expect(meddlingSentence([])).toBe('');
    expect(meddlingSentence(['gain control', 'noise suppression', 'echo cancelling'])).toContain(
      'its gain control, noise suppression and echo cancelling on',
    );
  });
});

describe('why a pluck stands apart', () => {
  it.each([
    [220.4, 'an octave above the others'],
    [54.9, 'an octave below the others'],
    [331, 'three times the others: an upper partial'],
    [36.7, 'a third of the others'],
    [111.1, '1.0 % higher: the belt moved, or was plucked otherwise'],
    [108, '1.8 % lower: the belt moved, or was plucked otherwise'],
    [132, '20 % higher: another span'],
    [88, '20 % lower: another span'],
  ])('%d Hz against 110: %s', (frequency, words) => {
    expect(whyApart(frequency, 110)).toBe(words);
  });
});
