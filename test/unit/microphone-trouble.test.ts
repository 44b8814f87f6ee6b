import { describe, expect, it } from 'vitest';
import { whyApart } from '../../src/app/phone/note/fate';
import say from '../../src/app/phone/note/words/en';
import ears from '../../src/app/phone/sound/words/en';
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
    for (const sentence of [
      ...Object.values(ears.trouble),
      ...Object.values(say.refusal).map(({ advice }) => advice),
    ]) {
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

  it('is said, each by its name', () => {
    const { names, sentence } = ears.meddling;
    expect(sentence(Object.values(names).slice(0, 1))).toContain('its gain control on');
    expect(sentence(Object.values(names))).toContain('its gain control, noise suppression and echo cancelling on');
  });
});

describe('why a pluck stands apart', () => {
  it.each([
    [220.4, say.apart.octaveAbove],
    [54.9, say.apart.octaveBelow],
    [331, say.apart.thrice],
    [36.7, say.apart.third],
    [111.1, say.apart.moved('1.0', 'higher')],
    [108, say.apart.moved('1.8', 'lower')],
    [132, say.apart.otherSpan('20', 'higher')],
    [88, say.apart.otherSpan('20', 'lower')],
  ])('%d Hz against 110: %s', (frequency, words) => {
    expect(whyApart(frequency, 110)).toBe(words);
  });
});
