import type { Seen } from '../support/leftovers';

/** What a page tells the test: what it showed, and what was typed or opened in it. */
export interface Told {
  readonly seen: readonly Seen[];
  readonly given: readonly string[];
  /** What came in a link's query. */
  readonly link?: string;
}

/**
 * Runs in every page before its first script, with nothing from outside itself: tells of every text that comes into the
 * page, shown at once or folded away, and of everything that the test types or opens.
 */
export function watchPage(): void {
  const tell = Reflect.get(window, 'tellOfWords') as (told: Told) => Promise<void>;
  const UNSAID = 'math, script, style, noscript, template, cite, code, [translate="no"]';
  const ATTRIBUTES = ['aria-label', 'aria-description', 'aria-roledescription', 'title', 'placeholder', 'alt'];
  const told = new Set<string>();
  let seen: Seen[] = [];

  const pathOf = (element: Element): string => {
    const path: string[] = [];
    for (let at: Element | null = element; at && path.length < 4; at = at.parentElement) {
      path.unshift([at.localName, ...at.classList].join('.'));
    }
    return path.join(' > ');
  };

  const say = (text: string | null, element: Element | null, attribute = ''): void => {
    if (!text || !element || !/\p{L}{2}/u.test(text) || element.closest(UNSAID)) return;
    const where = attribute ? `${pathOf(element)} [${attribute}]` : pathOf(element);
    // A number that moves is the same sentence.
    const sentence = `${where} ${text.replace(/\d+/g, '0')}`;
    if (told.has(sentence)) return;
    told.add(sentence);
    seen.push({ text, where, route: location.hash.split('?')[0] ?? '' });
  };

  const look = (node: Node): void => {
    if (node instanceof Text) {
      if (!(node.parentElement instanceof HTMLTextAreaElement)) say(node.data, node.parentElement);
    } else if (node instanceof Element) {
      for (const name of ATTRIBUTES) say(node.getAttribute(name), node, name);
      node.childNodes.forEach(look);
    }
  };

  new MutationObserver((changes) => {
    for (const { target, addedNodes, attributeName, type } of changes) {
      if (type === 'childList') addedNodes.forEach(look);
      else if (attributeName !== null && target instanceof Element)
        say(target.getAttribute(attributeName), target, attributeName);
      else look(target);
    }
    if (seen.length > 0) void tell({ seen, given: [] });
    seen = [];
  }).observe(document, {
    subtree: true,
    childList: true,
    characterData: true,
    attributes: true,
    attributeFilter: ATTRIBUTES,
  });

  const hear = ({ target }: Event): void => {
    if (target instanceof HTMLInputElement && target.files) {
      for (const file of target.files) {
        if (/json|text/.test(file.type)) void file.text().then((text) => tell({ seen: [], given: [text] }));
      }
    } else if (target instanceof HTMLInputElement || target instanceof HTMLTextAreaElement) {
      void tell({ seen: [], given: [target.value] });
    }
  };
  const opened = (): void => {
    const [, link = ''] = location.hash.split('?');
    if (link) void tell({ seen: [], given: [...new URLSearchParams(link).values()], link });
  };
  opened();
  addEventListener('hashchange', opened);
  addEventListener('input', hear, true);
  addEventListener('change', hear, true);
}
