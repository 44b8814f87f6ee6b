import { parseSync } from 'vite';
import { isNode, partsWithText, type Node } from './pseudo.ts';

/** A text of a words file: the keys that lead to it, the line it begins on, and the text with `…` for each value put in. */
export interface FileText {
  readonly key: string;
  readonly line: number;
  readonly text: string;
  /** Stands inside another text: one of the words to choose from. */
  readonly piece: boolean;
}

const HOLE = '…';

/** The longest that a piece of a template may become: the longer branch of a choice, `…` for a value. */
function longest(node: Node): string {
  if (node.type === 'Literal') return String(node.value);
  if (node.type === 'TemplateLiteral') return templateText(node);
  if (node.type === 'ConditionalExpression') {
    const [yes, no] = [longest(node.consequent as Node), longest(node.alternate as Node)];
    return yes.length > no.length ? yes : no;
  }
  if (node.type === 'BinaryExpression' && node.operator === '+')
    return longest(node.left as Node) + longest(node.right as Node);
  return HOLE;
}

function templateText(template: Node): string {
  const chunks = (template.quasis as readonly Node[]).map((quasi) => (quasi.value as { cooked: string }).cooked);
  const values = template.expressions as readonly Node[];
  return chunks.map((chunk, at) => chunk + (values[at] ? longest(values[at]) : '')).join('');
}

/** The name that a node gives to what stands in it: a property, a variable, a function. */
function nameOf(node: Node): string | undefined {
  const named = { Property: node.key, VariableDeclarator: node.id, FunctionDeclaration: node.id }[node.type];
  if (!isNode(named)) return undefined;
  const name = named.name ?? named.value;
  return typeof name === 'string' || typeof name === 'number' ? String(name) : undefined;
}

/**
 * Every text of a words file, as it stands in the source: all branches of all functions, with no need to call them.
 * @throws Error where the source does not parse
 */
export function textsIn(source: string, file: string): readonly FileText[] {
  const { program, errors } = parseSync(file, source);
  if (errors[0]) throw new Error(`${file}: ${errors[0].message}`);
  const found: FileText[] = [];
  const walk = (value: unknown, path: readonly string[], piece: boolean): void => {
    if (Array.isArray(value)) {
      for (const part of value) walk(part, path, piece);
      return;
    }
    if (!isNode(value)) return;
    const add = (text: string) =>
      found.push({ key: path.join('.'), line: source.slice(0, value.start).split('\n').length, text, piece });
    if (value.type === 'Literal') {
      if (typeof value.value === 'string') add(value.value);
    } else if (value.type === 'TemplateLiteral') {
      add(templateText(value));
      walk(value.expressions, path, true);
    } else {
      const name = nameOf(value);
      for (const part of partsWithText(value)) walk(part, name === undefined ? path : [...path, name], piece);
    }
  };
  walk(program.body, [], false);
  return found;
}
