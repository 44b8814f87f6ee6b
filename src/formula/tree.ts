/** An expression. Constants are named numbers that print as what they are (a full turn prints as 360°). */
export type Node =
  | { readonly type: 'number'; readonly value: number; readonly text: string }
  | { readonly type: 'symbol'; readonly name: string }
  | { readonly type: 'constant'; readonly name: string }
  | { readonly type: 'negate'; readonly of: Node }
  | { readonly type: 'operation'; readonly op: Operator; readonly left: Node; readonly right: Node }
  | { readonly type: 'call'; readonly name: string; readonly args: readonly Node[] };

export type Operator = '+' | '-' | '*' | '/' | '^';

/** A formula: `symbol = tree`. `text` is the one place it is written. */
export interface Formula {
  readonly text: string;
  readonly symbol: string;
  readonly tree: Node;
  /** Symbols the tree uses, in order of first use. */
  readonly uses: readonly string[];
}

/** Sub-expressions of a node, itself first. */
export function* walk(node: Node): Generator<Node> {
  yield node;
  if (node.type === 'negate') yield* walk(node.of);
  if (node.type === 'operation') {
    yield* walk(node.left);
    yield* walk(node.right);
  }
  if (node.type === 'call') for (const arg of node.args) yield* walk(arg);
}

/** Names of the symbols used in a node, in order of first use. */
export function symbolsIn(node: Node): string[] {
  const names = new Set<string>();
  for (const part of walk(node)) if (part.type === 'symbol') names.add(part.name);
  return [...names];
}
