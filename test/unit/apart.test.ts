import { createMemo, createRoot, createSignal } from 'solid-js';
import { expect, it } from 'vitest';
import { createApart } from '../../src/ui/apart';

it('what is read apart from its source is what the source is, and is told of it only when it is another', () => {
  createRoot((dispose) => {
    const [source, setSource] = createSignal({ a: 1, b: 2 });
    const [a, b] = [createApart(() => source().a), createApart(() => source().b)];
    let runs = 0;
    const twice = createMemo(() => {
      runs += 1;
      return 2 * b();
    });
    setSource({ a: 3, b: 2 });
    expect([a(), b(), twice(), runs]).toEqual([3, 2, 4, 1]);
    setSource({ a: 3, b: 5 });
    expect([a(), b(), twice(), runs]).toEqual([3, 5, 10, 2]);
    dispose();
  });
});
