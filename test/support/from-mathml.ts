/*
 * Reads a typeset formula back as a reader would: only what can be seen counts. Rows group nothing; brackets, bars,
 * fractions, roots and raised text do. The result is text for mathjs.
 */
interface Element {
  readonly tag: string;
  readonly children: readonly (Element | string)[];
}

const ENTITIES: Readonly<Record<string, string>> = {
  '&#x2061;': '',
  '&#xA0;': ' ',
  '&amp;': '&',
  '&lt;': '<',
  '&gt;': '>',
};

/** The elements of a MathML text. Throws where tags do not match. */
export function parseMathml(text: string): Element {
  const root: { tag: string; children: (Element | string)[] } = { tag: '', children: [] };
  const open = [root];
  for (const [token] of text.matchAll(/<[^>]+>|[^<]+/g)) {
    const top = open.at(-1)!;
    const tag = /^<\/?([a-z]+)/.exec(token)?.[1];
    if (tag === undefined) {
      top.children.push(token.replace(/&[^;]+;/g, (entity) => ENTITIES[entity] ?? fail(`entity ${entity}`)));
    } else if (token.startsWith('</')) {
      if (top.tag !== tag) fail(`</${tag}> closes <${top.tag}>`);
      open.pop();
    } else {
      const element = { tag, children: [] };
      top.children.push(element);
      open.push(element);
    }
  }
  if (open.length !== 1 || root.children.length !== 1) fail('one element, closed');
  return root.children[0] as Element;
}

function fail(what: string): never {
  throw new Error(`Not well formed: ${what}`);
}

const FUNCTIONS: Readonly<Record<string, string>> = {
  sin: 'sin', cos: 'cos', tan: 'tan', arcsin: 'asin', arccos: 'acos', arctan: 'atan', ln: 'log', min: 'min', max: 'max', round: 'round',
}; // prettier-ignore
const SIGNS: Readonly<Record<string, string>> = { '−': '-', '·': '*', '+': '+', '(': '(', ')': ')', ',': ',', '⌊': 'floor(', '⌋': ')', '⌈': 'ceil(', '⌉': ')', '': '' }; // prettier-ignore

const isElement = (node: Element | string | undefined): node is Element => typeof node === 'object';

function textOf(node: Element | string): string {
  return isElement(node) ? node.children.map(textOf).join('') : node;
}

function isBracketed(node: Element): boolean {
  const [first, last] = [node.children[0], node.children.at(-1)];
  return node.tag === 'mrow' && !!first && textOf(first) === '(' && !!last && textOf(last) === ')';
}

function power(base: Element, exponent: string, read: Reader): string {
  const name = textOf(base);
  if (base.tag === 'mi' && name === 'e') return `exp(${exponent})`;
  if (!['mi', 'mn', 'msub'].includes(base.tag) && !isBracketed(base)) throw new Error(`What is raised in ${name}?`);
  return `${read(base)}^(${exponent})`;
}

type Reader = (node: Element) => string;

/**
 * Text for mathjs of a typeset expression.
 *
 * @param symbol what a printed symbol stands for, by its text with the subscript after `_`
 */
export function readMathml(node: Element, symbol: (printed: string) => string): string {
  const read: Reader = (part) => readMathml(part, symbol);
  const children = node.children.filter(isElement);
  const [first, second, ...rest] = children;
  switch (node.tag) {
    case 'mn':
    case 'mi':
      return FUNCTIONS[textOf(node)] ?? symbol(textOf(node));
    case 'mo':
      return SIGNS[textOf(node)] ?? fail(`sign ${textOf(node)}`);
    case 'mtext':
      return '';
    case 'msub':
      return symbol(children.map(textOf).join('_'));
    case 'mfrac':
      return `((${read(first!)})/(${read(second!)}))`;
    case 'msqrt':
      return `sqrt(${children.map(read).join('')})`;
    case 'msup':
      return power(first!, read(second!), read);
    case 'mrow':
    case 'math': {
      // sin²(x) is the square of sin(x).
      if (first?.tag === 'msup' && textOf(first.children[0]!) in FUNCTIONS) {
        const [name, exponent] = first.children as [Element, Element];
        return `(${read(name)}${rest.map(read).join('')})^(${read(exponent)})`;
      }
      if (first?.tag === 'mo' && textOf(first) === '|') return `abs(${children.slice(1, -1).map(read).join('')})`;
      return children.map(read).join('');
    }
    default:
      return fail(`element ${node.tag}`);
  }
}
