const LINES = ['Units', 'Range', 'Errors', 'Source'];

/** @typedef {Parameters<NonNullable<import('eslint').Rule.RuleListener['ExportNamedDeclaration']>>[0]} Export */

/**
 * Whether a declaration is something to call.
 * @param {Export['declaration']} declaration
 */
const isFunction = (declaration) =>
  declaration?.type === 'FunctionDeclaration' ||
  (declaration?.type === 'VariableDeclaration' &&
    declaration.declarations.some(({ init }) => init?.type === 'ArrowFunctionExpression'));

/**
 * What the docstring of an export lacks: a sum has all four lines, and its tables and limits say what they are;
 * elsewhere a function has a docstring, and a type or a number may speak by its name.
 * @param {string | undefined} docstring
 * @param {boolean} isCallable
 * @param {boolean} isSum
 * @returns {string[]}
 */
const missingFrom = (docstring, isCallable, isSum) => {
  if (docstring === undefined) return isCallable || isSum ? ['a docstring'] : [];
  if (!isCallable || !isSum) return [];
  return LINES.filter((line) => !new RegExp(`^\\s*\\*\\s*${line}[ \\t]+\\S`, 'm').test(docstring));
};

/** @type {import('eslint').Rule.RuleModule} */
export const sumDocstring = {
  meta: {
    type: 'problem',
    schema: [{ type: 'object', properties: { sums: { type: 'boolean' } }, additionalProperties: false }],
    messages: { missing: 'The comment above this export lacks: {{what}}.' },
  },
  create(context) {
    const [{ sums = false } = {}] = context.options;
    return {
      ExportNamedDeclaration(node) {
        if (!node.declaration) return;
        const comment = context.sourceCode.getCommentsBefore(node).at(-1);
        const docstring =
          comment?.type === 'Block' && comment.value.startsWith('*') ? comment.value : undefined;
        const missing = missingFrom(docstring, isFunction(node.declaration), sums);
        if (missing.length > 0)
          context.report({ node, messageId: 'missing', data: { what: missing.join(', ') } });
      },
    };
  },
};
