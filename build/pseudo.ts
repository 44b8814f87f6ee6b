import { parseSync } from 'vite';
import { accented, inStyle, mark, padding, type Style } from './strange.ts';

export interface Node {
  readonly type: string;
  readonly start: number;
  readonly end: number;
  readonly [key: string]: unknown;
}

/** A stretch of the source and the text in it, or for it. */
interface Stretch {
  readonly start: number;
  readonly end: number;
  readonly text: string;
}

export const isNode = (value: unknown): value is Node => typeof value === 'object' && value !== null && 'type' in value;

const COMPARISONS = new Set(['===', '!==', '==', '!=', '<', '>', '<=', '>=', 'in', 'instanceof']);
const LOOK_UPS = new Set(['includes', 'startsWith', 'endsWith', 'indexOf', 'has', 'get', 'match', 'test', 'split']);
const TYPED = new Set(['TSAsExpression', 'TSSatisfiesExpression', 'TSNonNullExpression', 'TSTypeAssertion']);

/** Parts of a node in which a string is text; elsewhere it names something: a key, a module, a case, a type. */
export function partsWithText(node: Node): readonly unknown[] {
  const { type } = node;
  if (type.startsWith('TS')) return TYPED.has(type) ? [node.expression] : [];
  switch (type) {
    case 'ImportDeclaration':
    case 'ImportExpression':
    case 'ExportAllDeclaration':
    case 'NewExpression':
    case 'TaggedTemplateExpression':
    // A parameter's default is oftener a choice that the function compares than a text.
    case 'AssignmentPattern':
      return [];
    case 'ExportNamedDeclaration':
      return [node.declaration];
    case 'ExpressionStatement':
      return typeof node.directive === 'string' ? [] : [node.expression];
    case 'Property':
    case 'PropertyDefinition':
    case 'MethodDefinition':
      return [node.value];
    case 'MemberExpression':
      return [node.object];
    case 'BinaryExpression':
      return COMPARISONS.has(String(node.operator)) ? [] : [node.left, node.right];
    case 'SwitchStatement':
      return [node.cases];
    case 'SwitchCase':
      return [node.consequent];
    case 'CallExpression':
      return [node.callee, ...textArguments(node)];
    default:
      return Object.values(node);
  }
}

function textArguments(call: Node): readonly unknown[] {
  const given: readonly unknown[] = Array.isArray(call.arguments) ? call.arguments : [];
  if (!isNode(call.callee) || call.callee.type !== 'MemberExpression' || !isNode(call.callee.property)) return given;
  const method = String(call.callee.property.name);
  return LOOK_UPS.has(method) ? [] : method.startsWith('replace') ? given.slice(1) : given;
}

/** The parser counts the signs around a chunk (`}` before, `${` after) as its own in TypeScript, and not in JavaScript. */
function chunkOf(quasi: Node): Stretch {
  const { raw, cooked } = quasi.value as { readonly raw: string; readonly cooked: string };
  const start = quasi.end - quasi.start === raw.length ? quasi.start : quasi.start + 1;
  return { start, end: start + raw.length, text: cooked };
}

const escapeChunk = (text: string): string => text.replace(/[\\`]|\$(?=\{)/g, '\\$&');

/** The chunks of one template; the brackets of `pseudo` stand around it as a whole. */
function templateEdits(template: Node, style: Style, piece: boolean): Stretch[] {
  const chunks = (template.quasis as readonly Node[]).map(chunkOf);
  const whole = chunks.map(({ text }) => text).join('');
  const around = style === 'pseudo' && !piece && /[A-Za-z]/.test(whole);
  return chunks.map(({ start, end, text }, at) => {
    const before = around && at === 0 ? '⟦' : '';
    const after = around && at === chunks.length - 1 ? `${padding(whole)}⟧` : '';
    const said = style === 'marked' ? mark(text) : accented(text);
    return { start, end, text: `${before}${escapeChunk(said)}${after}` };
  });
}

function collect(value: unknown, style: Style, piece: boolean, edits: Stretch[]): void {
  if (Array.isArray(value)) {
    for (const part of value) collect(part, style, piece, edits);
    return;
  }
  if (!isNode(value)) return;
  if (value.type === 'Literal') {
    if (typeof value.value !== 'string') return;
    const said = piece && style === 'pseudo' ? accented(value.value) : inStyle(value.value, style);
    edits.push({ start: value.start, end: value.end, text: JSON.stringify(said) });
  } else if (value.type === 'TemplateLiteral') {
    edits.push(...templateEdits(value, style, piece));
    collect(value.expressions, style, true, edits);
  } else {
    const glued = piece || (value.type === 'BinaryExpression' && value.operator === '+');
    for (const part of partsWithText(value)) collect(part, style, glued, edits);
  }
}

/**
 * A words module with its text rewritten: string literals and chunks of templates, nothing that the code compares,
 * imports, indexes by or uses as a key.
 * @param file names the language of the source by its ending
 * @throws Error where the source does not parse
 */
export function rewriteWords(source: string, file: string, style: Style): string {
  const { program, errors } = parseSync(file, source);
  if (errors[0]) throw new Error(`${file}: ${errors[0].message}`);
  const edits: Stretch[] = [];
  collect(program.body, style, false, edits);
  edits.sort((a, b) => a.start - b.start);
  const parts: string[] = [];
  let done = 0;
  for (const { start, end, text } of edits) {
    parts.push(source.slice(done, start), text);
    done = end;
  }
  return [...parts, source.slice(done)].join('');
}
