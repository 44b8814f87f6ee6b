import typescript from 'typescript';

const { TypeFlags } = typescript;

/** Attributes that a person reads or hears. */
const SAID = new Set(['aria-label', 'aria-description', 'title', 'placeholder', 'alt', 'label']);

/** Attributes that hold no words, whatever they look like. */
const TECHNICAL =
  /^(class|classList|style|id|for|role|rel|href|src|type|accept|autocomplete|media|sizes|d|transform|points|viewBox|stroke-dasharray|preserveAspectRatio|data-.*|aria-(labelledby|describedby|controls|owns|live|current))$/;

/** Calls whose strings are addresses, formulas, names of works, ids, or a fault for whoever wrote the formula. */
const NAMES_GIVEN = /^(matchMedia|querySelector|querySelectorAll|closest|matches|formula|cite|memory|defineKind|fail)$/;

/** Keys whose strings name one of a few cases, a typeface, a work, what a movement moves, or what a person may type. */
const NAMING = new Set([
  'id',
  'part',
  'direction',
  'kind',
  'type',
  'font',
  'className',
  'cssText',
  'source',
  'also',
  'verdict',
]);

const COMPARISON = /^([=!]==?|in)$/;

/** Stands for each value spliced into a template. */
const SPLICE = '\uFFFC';

/**
 * Two words with one space between, one of them of two letters or more (`Leave it`, not `M 1 2 L 3 4` nor `a = b`), or
 * such a word beside a value (`Line ${n}`).
 */
const PHRASE = (() => {
  const gap = '[^\\p{L}\\s]* [^\\p{L}\\s\uFFFC]*';
  const [word, either] = ['\\p{L}{2,}', `[\\p{L}${SPLICE}]`];
  return new RegExp(`${word}${gap}${either}|${either}${gap}${word}`, 'u');
})();

/** MIME types, selectors, members of JSON, and lists of class names with a hyphen in each. */
const NO_PROSE = /^[a-z]+\/[\w.+-]+(;|$)|^[.#[]|^\s*"\w+": |^[a-z]+(-[a-z0-9]+)+( [a-z]+(-[a-z0-9]+)+)*$/;
const WORD = /\p{L}{2,}/u;
const UNIT = /^[\s\d\uFFFC]*(mm|µm|Hz|kHz|dB|°C|°F)\s*$/;
const TAG = /<[^>]*>/g;

/** What a literal or a template says; mark-up is no text. */
const textOf = (node) => {
  const text = node.type === 'TemplateLiteral' ? node.quasis.map(({ value }) => value.cooked).join(SPLICE) : node.value;
  return typeof text === 'string' ? text.replace(TAG, '\n') : '';
};

const nameOf = (node) => node?.name ?? node?.value ?? node?.property?.name ?? '';

/** True where a string at `child` of `parent` is read by the machine or by whoever develops. */
function isOutOfSight(parent, child) {
  switch (parent.type) {
    case 'ImportDeclaration':
    case 'ImportExpression':
    case 'ExportNamedDeclaration':
    case 'ExportAllDeclaration':
    case 'SwitchCase':
    case 'TSLiteralType':
    case 'TSTypeReference':
      return parent.type !== 'SwitchCase' || parent.test === child;
    case 'JSXAttribute':
      return TECHNICAL.test(nameOf(parent.name));
    case 'Property':
    case 'PropertyDefinition':
      return parent.key === child || NAMING.has(nameOf(parent.key));
    case 'MemberExpression':
      return parent.property === child;
    case 'BinaryExpression':
      return COMPARISON.test(parent.operator);
    case 'AssignmentExpression':
      return parent.right === child && NAMING.has(nameOf(parent.left));
    case 'NewExpression':
      return /(Error|Exception)$/.test(nameOf(parent.callee));
    // The name of a work that several citations share.
    case 'VariableDeclarator':
      return parent.init === child && /^WORK_[A-Z]+$/.test(nameOf(parent.id));
    case 'CallExpression':
      return (
        parent.callee !== child &&
        (parent.callee.type === 'Super' ||
          NAMES_GIVEN.test(nameOf(parent.callee)) ||
          parent.callee.object?.name === 'console')
      );
    default:
      return false;
  }
}

/** Statements and functions end the search: what is around them does not say what a string in them is for. */
const OUTERMOST = /(Statement|Declaration|Function|FunctionExpression|Element|Fragment)$/;

function isUnsaid(node) {
  for (let child = node; child.parent; child = child.parent) {
    if (isOutOfSight(child.parent, child)) return true;
    if (OUTERMOST.test(child.parent.type)) return false;
  }
  return false;
}

/** Where a person reads this string, by itself or as one of a choice: a spoken attribute, or between tags. */
function shownIn(node) {
  for (let at = node; at.parent; at = at.parent) {
    const { type, name } = at.parent;
    if (type === 'JSXAttribute') return SAID.has(nameOf(name)) ? nameOf(name) : undefined;
    if (type === 'JSXElement' || type === 'JSXFragment') return 'the page';
    if (type === 'ConditionalExpression' && at.parent.test === at) return undefined;
    if (!/^(JSXExpressionContainer|ConditionalExpression|LogicalExpression|TemplateLiteral)$/.test(type))
      return undefined;
  }
  return undefined;
}

/** True where the types allow a few strings only, so that this one is an id: `'too close'` of `'within' | 'too close'`. */
function isOneOfAFew(node, { program, esTreeNodeToTSNodeMap }) {
  const wanted = program?.getTypeChecker().getContextualType(esTreeNodeToTSNodeMap.get(node));
  if (!wanted) return false;
  const types = wanted.isUnion() ? wanted.types : [wanted];
  return types.some((type) => type.isStringLiteral()) && !types.some((type) => type.flags & TypeFlags.String);
}

/** Text that a person sees, hears or reads out stands in a words file and nowhere else. */
const noWordsInLogic = {
  meta: {
    type: 'problem',
    schema: [],
    messages: {
      logic: 'Words in {{place}}: "{{text}}". Move them to words/en.ts of this folder and use `say`.',
    },
  },
  create(context) {
    const services = context.sourceCode.parserServices;
    const report = (node, place, text) =>
      context.report({ node, messageId: 'logic', data: { place, text: text.replaceAll(SPLICE, '…').trim() } });
    const check = (node) => {
      const text = textOf(node);
      if (!WORD.test(text) || UNIT.test(text) || NO_PROSE.test(text) || isUnsaid(node)) return;
      const place = shownIn(node);
      if (place) report(node, place, text);
      else if (PHRASE.test(text) && !isOneOfAFew(node, services)) report(node, 'logic', text);
    };
    return {
      Literal: check,
      TemplateLiteral: check,
      JSXText(node) {
        if (WORD.test(node.value) && !UNIT.test(node.value)) report(node, 'the page', node.value);
      },
    };
  },
};

export default { rules: { 'no-words-in-logic': noWordsInLogic } };
