/** Lines of a function: of code, without blank ones and comments. */
const MOST = 60;
/** Lines of a component, and of what keeps the state behind one (`createBench`): what is seen or kept together is read together. */
const MOST_SEEN = 120;

const FUNCTIONS = ['FunctionDeclaration', 'FunctionExpression', 'ArrowFunctionExpression'];
const CREATES = /^create[A-Z]/;

const nameOf = (node) => node.id?.name ?? node.parent.id?.name ?? node.parent.key?.name ?? '';

/** True of what gives a view, and of what makes signals for one. */
const isSeen = (name, filename) => (filename.endsWith('.tsx') && /^[A-Z]/.test(name)) || CREATES.test(name);

/** No function is longer than one can take in at a glance. */
const shortFunctions = {
  meta: {
    type: 'suggestion',
    schema: [],
    messages: { long: '{{name}} has {{lines}} lines of code, {{most}} are allowed: take a piece out of it.' },
  },
  create(context) {
    const { sourceCode, filename } = context;
    const comments = sourceCode.getAllComments();
    const isComment = (line) => comments.some(({ loc }) => loc.start.line <= line && line <= loc.end.line);
    const isCode = (line) => {
      const text = sourceCode.lines[line - 1].trim();
      return text !== '' && !(isComment(line) && /^(\/\/|\/\*|\*|\{\/\*)/.test(text));
    };
    const check = (node) => {
      const { start, end } = node.loc;
      const lines = Array.from({ length: end.line - start.line + 1 }, (_, i) => start.line + i).filter(isCode).length;
      const name = nameOf(node);
      const most = isSeen(name, filename) ? MOST_SEEN : MOST;
      if (lines > most)
        context.report({ node, messageId: 'long', data: { name: name || 'This function', lines, most } });
    };
    return Object.fromEntries(FUNCTIONS.map((type) => [type, check]));
  },
};

export default shortFunctions;
