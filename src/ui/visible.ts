import { createSignal, onCleanup } from 'solid-js';

const MARGIN = '100px';

/** Whether an element is on the screen or about to be: hand `watch` to its `ref`. */
export function createVisible(): { readonly visible: () => boolean; readonly watch: (element: Element) => void } {
  const [visible, setVisible] = createSignal(false);
  const observer = new IntersectionObserver((entries) => setVisible(entries.some((entry) => entry.isIntersecting)), {
    rootMargin: MARGIN,
  });
  onCleanup(() => observer.disconnect());
  return { visible, watch: (element) => observer.observe(element) };
}
