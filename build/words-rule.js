import typescript from 'typescript';

const { TypeFlags } = typescript;

/** Attributes that a person reads or hears. */
const SAID = new Set([
  'aria-label',
  'aria-description',
  'aria-roledescription',
  'aria-valuetext',
  'aria-placeholder',
  'ariaLabel',
  'ariaDescription',
  'ariaValueText',
  'title',
  'placeholder',
  'alt',
  'label',
  'summary',
  'download',
  'content',
]);

/** What an element shows, where code sets it. */
const SHOWS = new Set([...SAID, 'textContent', 'innerText', 'innerHTML', 'outerHTML', 'nodeValue', 'data', 'value']);

/** Calls that show or say what they are given, or set it in an attribute that does. */
const SHOWING =
  /^(alert|confirm|prompt|Notification|showNotification|setCustomValidity|createTextNode|insertAdjacentText|insertAdjacentHTML|fillText|strokeText|SpeechSynthesisUtterance)$/;

/** Keys of data that a person reads: one word there is enough. */
const READ = new Set([
  ...SAID,
  'text',
  'heading',
  'head',
  'caption',
  'hint',
  'message',
  'sentence',
  'glance',
  'spoken',
]);

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
  const gap = '[^\\p{L}\\s]*[ \u00A0\u2009\u202F][^\\p{L}\\s\uFFFC]*';
  const [word, either] = ['\\p{L}{2,}', `[\\p{L}${SPLICE}]`];
  return new RegExp(`${word}${gap}${either}|${either}${gap}${word}`, 'u');
})();

/** Words with a mark between that no space follows: the headings of a table (`Name;Unit`), lines of a text. */
const HEADINGS = /\p{L}{2,}["']?(?:[;|\t\n]|,(?!\p{Ll}))["']?\p{L}{2,}/u;

/** One word as a person reads it: `Close`, `Stop!` */
const LABEL = /^\s*\p{Lu}\p{Ll}+[.!?:…]*\s*$/u;

/** MIME types, selectors, addresses of data, members of JSON, and lists of class names with a hyphen in each. */
const NO_PROSE =
  /^[a-z]+\/[\w.+-]+(;|$)|^[.#][\w-]+|^\[(data-|aria-|[\w-]+[~|^$*]?=)|^data:[\w/+-]+[;,]|^\s*"\w+": |^[a-z]+(-[a-z0-9]+)+( [a-z]+(-[a-z0-9]+)+)*$/;
const WORD = /\p{L}{2,}/u;
const UNIT = /^[\s\d\uFFFC]*(mm|µm|mm\/m|Hz|kHz|dB|°C|°F)\s*$/;
const TAG = /<[^>]*>/g;

/** A piece of text, or what stands for a value. */
function piece(node) {
  if (node?.type === 'TemplateLiteral') return node.quasis.map(({ value }) => value.cooked).join(SPLICE);
  if (node?.type === 'Literal' && typeof node.value === 'string') return node.value;
  return isSum(node) ? piece(node.left) + piece(node.right) : SPLICE;
}

const isSum = (node) => node?.type === 'BinaryExpression' && node.operator === '+';
const isText = (node) => isSum(node) || node?.type === 'TemplateLiteral' || typeof node?.value === 'string';

/** What a literal, a template, or several of them put together say; mark-up is no text. */
function textOf(node) {
  const pieces = node.type === 'ArrayExpression' ? node.elements.map(piece).join(' ') : piece(node);
  return pieces === SPLICE ? '' : pieces.replace(TAG, '\0');
}

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

/**
 * Statements and functions end the search, and so do calls: what is around them does not say what a string in them is for. What
 * is handed on as it is does not.
 */
const OUTERMOST = /(Statement|Declaration|Function|FunctionExpression|Element|Fragment|CallExpression|NewExpression)$/;

function isUnsaid(node) {
  for (let child = node; child.parent; child = child.parent) {
    if (isOutOfSight(child.parent, child)) return true;
    if (OUTERMOST.test(child.parent.type)) return false;
  }
  return false;
}

const HANDED_ON = /^(JSXExpressionContainer|ConditionalExpression|LogicalExpression|TemplateLiteral|TSAsExpression)$/;

/** What a call does with a string that it is given: shows it, or sets it in an attribute that is read out. */
function shownBy({ callee, arguments: given }, node) {
  const name = nameOf(callee);
  if (SHOWING.test(name)) return name;
  const attribute = name === 'setAttribute' ? nameOf(given[0]) : '';
  return given[0] !== node && SAID.has(attribute) ? attribute : undefined;
}

/** Where a person reads this string, by itself or as one of a choice: a spoken attribute, between tags, or set by code. */
function shownIn(node) {
  for (let at = node; at.parent; at = at.parent) {
    const { parent } = at;
    const { type, name } = parent;
    if (type === 'JSXAttribute') return SAID.has(nameOf(name)) ? nameOf(name) : undefined;
    if (type === 'JSXElement' || type === 'JSXFragment') return 'the page';
    if (type === 'CallExpression' || type === 'NewExpression') return shownBy(parent, at);
    if (type === 'AssignmentExpression' && parent.right === at && parent.left.type === 'MemberExpression')
      return SHOWS.has(nameOf(parent.left)) ? nameOf(parent.left) : undefined;
    if (type === 'ConditionalExpression' && parent.test === at) return undefined;
    if (!HANDED_ON.test(type) && !isSum(parent)) return undefined;
  }
  return undefined;
}

/** True where one word, with a capital, is a label: given to a component, or under a key that a person reads. */
const isLabelled = ({ parent }) =>
  parent.type === 'JSXAttribute' ||
  (parent.type === 'JSXExpressionContainer' && parent.parent.type === 'JSXAttribute') ||
  (parent.type === 'Property' && READ.has(nameOf(parent.key)));

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
      else if (
        (PHRASE.test(text) || HEADINGS.test(text) || (LABEL.test(text) && isLabelled(node))) &&
        !isOneOfAFew(node, services)
      )
        report(node, 'logic', text);
    };
    // A sum is looked at as a whole, and so is a list that becomes one text.
    const checkAlone = (node) => {
      if (!isSum(node.parent)) check(node);
    };
    return {
      Literal: checkAlone,
      TemplateLiteral: checkAlone,
      BinaryExpression(node) {
        if (isSum(node) && (isText(node.left) || isText(node.right))) checkAlone(node);
      },
      'CallExpression[callee.property.name="join"] > MemberExpression.callee > ArrayExpression.object'(node) {
        if (node.elements.every(isText) && !node.elements.some((one) => PHRASE.test(textOf(one)))) check(node);
      },
      JSXText(node) {
        if (WORD.test(node.value) && !UNIT.test(node.value)) report(node, 'the page', node.value);
      },
    };
  },
};

export default { rules: { 'no-words-in-logic': noWordsInLogic } };
