import { constants } from './constants';
import type { Formula, Node } from './tree';

const GREEK: Readonly<Record<string, string>> = {
  alpha: 'α', beta: 'β', gamma: 'γ', delta: 'δ', epsilon: 'ε', eta: 'η', theta: 'θ', kappa: 'κ', lambda: 'λ', mu: 'μ',
  nu: 'ν', rho: 'ρ', sigma: 'σ', tau: 'τ', phi: 'φ', psi: 'ψ', omega: 'ω', Delta: 'Δ', Theta: 'Θ', Phi: 'Φ',
}; // prettier-ignore

function escape(text: string): string {
  return text.replace(/&/g, '&amp;').replace(/</g, '&lt;').replace(/>/g, '&gt;');
}

/** The printed base and subscript of a symbol: `dh_s` is Δh with subscript s, `theta_0` is θ with subscript 0. */
export function symbolParts(name: string): { readonly base: string; readonly sub: string } {
  const [first = name, ...rest] = name.split('_');
  const greek = GREEK[first];
  const base = greek ?? (/^d[A-Za-z]/.test(first) ? `Δ${GREEK[first.slice(1)] ?? first.slice(1)}` : first);
  return { base, sub: rest.map((part) => GREEK[part] ?? part).join(',') };
}

/** A symbol as MathML. */
export function symbolMathml(name: string): string {
  const { base, sub } = symbolParts(name);
  const letter = `<mi>${escape(base)}</mi>`;
  if (sub === '') return letter;
  const tag = /^\d/.test(sub) ? 'mn' : 'mi';
  return `<msub>${letter}<${tag}${tag === 'mi' ? ' mathvariant="normal"' : ''}>${escape(sub)}</${tag}></msub>`;
}

const PRECEDENCE: Readonly<Record<string, number>> = { '+': 1, '-': 1, '*': 2, '/': 2, '^': 3 };

function precedence(node: Node): number {
  if (node.type === 'operation') return PRECEDENCE[node.op] ?? 4;
  return node.type === 'negate' ? 1 : 4;
}

const brackets = (inner: string): string => `<mrow><mo>(</mo>${inner}<mo>)</mo></mrow>`;

type Print = (name: string) => string;

function power(left: Node, right: Node, symbol: Print): string {
  if (left.type === 'call' && ['sin', 'cos', 'tan'].includes(left.name) && right.type === 'number') {
    const [arg] = left.args;
    const name = `<msup><mi>${left.name}</mi><mn>${right.text}</mn></msup>`;
    return `<mrow>${name}<mo>&#x2061;</mo>${arg ? brackets(render(arg, symbol)) : ''}</mrow>`;
  }
  const atom = left.type === 'symbol' || left.type === 'constant' || left.type === 'number';
  const printed = render(left, symbol);
  // A sign, a unit or a degree sign in the base would read as standing outside the power.
  const bare = atom && !/^<mrow>|<mtext>|[°′]/.test(printed);
  const base = bare ? printed : brackets(printed);
  return `<msup>${base}${render(right, symbol)}</msup>`;
}

function call(node: Node & { type: 'call' }, symbol: Print): string {
  const args = node.args.map((arg) => render(arg, symbol));
  const [first = ''] = args;
  if (node.name === 'sqrt') return `<msqrt>${first}</msqrt>`;
  if (node.name === 'abs') return `<mrow><mo>|</mo>${first}<mo>|</mo></mrow>`;
  if (node.name === 'floor') return `<mrow><mo>⌊</mo>${first}<mo>⌋</mo></mrow>`;
  if (node.name === 'ceil') return `<mrow><mo>⌈</mo>${first}<mo>⌉</mo></mrow>`;
  if (node.name === 'exp') return `<msup><mi mathvariant="normal">e</mi>${first}</msup>`;
  const name = { asin: 'arcsin', acos: 'arccos', atan: 'arctan' }[node.name] ?? node.name;
  return `<mrow><mi>${name}</mi><mo>&#x2061;</mo>${brackets(args.join('<mo>,</mo>'))}</mrow>`;
}

function render(node: Node, symbol: Print): string {
  switch (node.type) {
    case 'number':
      return `<mn>${node.text}</mn>`;
    case 'constant':
      return constants[node.name]?.mathml ?? `<mi>${node.name}</mi>`;
    case 'symbol':
      return symbol(node.name);
    case 'negate': {
      const inner = render(node.of, symbol);
      return `<mrow><mo>−</mo>${precedence(node.of) < 2 ? brackets(inner) : inner}</mrow>`;
    }
    case 'call':
      return call(node, symbol);
    case 'operation': {
      const { op, left, right } = node;
      if (op === '/') return `<mfrac>${row(render(left, symbol))}${row(render(right, symbol))}</mfrac>`;
      if (op === '^') return power(left, right, symbol);
      const own = PRECEDENCE[op] ?? 4;
      const wrap = (child: Node, isRight: boolean): string => {
        const printed = render(child, symbol);
        const looser = precedence(child) < own || (isRight && op === '-' && precedence(child) === own);
        const signed = isRight && printed.startsWith('<mrow><mo>−');
        return looser || signed ? brackets(printed) : printed;
      };
      const sign = op === '*' ? '<mo>·</mo>' : `<mo>${op === '-' ? '−' : '+'}</mo>`;
      return `<mrow>${wrap(left, false)}${sign}${wrap(right, true)}</mrow>`;
    }
  }
}

const row = (inner: string): string => `<mrow>${inner}</mrow>`;

const math = (inner: string): string => `<math display="block"><mrow>${inner}</mrow></math>`;

/** A formula typeset with its symbols. */
export function formulaMathml(formula: Formula): string {
  return math(`${symbolMathml(formula.symbol)}<mo>=</mo>${render(formula.tree, symbolMathml)}`);
}

/**
 * The same formula with numbers and units put in.
 *
 * @param print a symbol's value with its unit as plain text, or undefined where it is not known
 * @param result the left-hand side's value as plain text
 */
export function filledMathml(formula: Formula, print: (name: string) => string | undefined, result: string): string {
  const put: Print = (name) => {
    const text = print(name);
    if (text === undefined) return symbolMathml(name);
    const [number = '', ...unit] = text.split('\u00a0');
    const tail = unit.length > 0 ? `<mtext>&#xA0;${escape(unit.join(' '))}</mtext>` : '';
    const written = `<mn>${escape(number.replace(/^−/, ''))}</mn>${tail}`;
    if (number.startsWith('−')) return `<mrow><mo>−</mo>${written}</mrow>`;
    return tail === '' ? written : `<mrow>${written}</mrow>`;
  };
  return math(`${render(formula.tree, put)}<mo>=</mo><mtext>${escape(result)}</mtext>`);
}

/** A governing equation that the formulas cannot hold (a sum, an integral), in words and signs. */
export function wordsMathml(symbol: string, equation: string): string {
  return `<math><mrow>${symbolMathml(symbol)}<mtext>: ${escape(equation)}</mtext></mrow></math>`;
}
