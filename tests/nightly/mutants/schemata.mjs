import ts from 'typescript';

/**
 * `early`: read once while the module is loaded, so that it has to be awake before that.
 * @typedef {{ id: number, file: string, line: number, change: string, early: boolean }} Mutant
 */

/** What each operator is turned into. A comparison is turned round, and its border moved by one. */
const OPERATORS = {
  '<': ['<=', '>='],
  '<=': ['<', '>'],
  '>': ['>=', '<='],
  '>=': ['>', '<'],
  '===': ['!=='],
  '!==': ['==='],
  '+': ['-'],
  '-': ['+'],
};

/** Operators of which each side alone takes the place of both. */
const EITHER_SIDE = ['&&', '||', '??'];

/** Tables whose lines are rules: each line is left out once. */
const TABLES = /^(REMEDIES|YIELDS|ANSWERS|CLOCK|RUNGS|REFUSALS|[A-Z]+_REFUSALS)$/;

/**
 * The source with all of its mutants in it, each asleep behind its number: `globalThis.mutant` wakes one. Nothing on disk
 * is changed, so a run that is broken off leaves the tree as it was.
 * @param {string} file
 * @param {string} text
 * @param {Mutant[]} mutants those found are added
 * @returns {string}
 */
export function withMutants(file, text, mutants) {
  /** The machine is built while its module is loaded, functions and all. */
  const isMachine = text.includes('createMachine(');
  const source = ts.createSourceFile(file, text, ts.ScriptTarget.Latest, true);
  /** @type {(node: ts.Node) => string} */
  const plain = (node) => node.getText(source).replace(/\s+/g, ' ');
  /** @param {ts.Node} node @param {string} to */
  const named = (node, to) => {
    const id = mutants.length + 1;
    const { line } = source.getLineAndCharacterOfPosition(node.getStart(source));
    const change = `${shortened(plain(node))} → ${shortened(to)}`;
    mutants.push({ id, file, line: line + 1, change, early: isMachine || !isInFunction(node) });
    return id;
  };
  /** @param {ts.Node} node @returns {string} */
  const told = (node) => {
    const inner = withChildren(node);
    const others = isExpressionPlace(node) ? alternatives(node) : [];
    return others.reduce(
      (kept, [to, shown]) => `(globalThis.mutant === ${named(node, shown)} ? (${to}) : ${kept})`,
      others.length > 0 ? `(${inner})` : inner,
    );
  };
  /** @param {ts.Node} node @returns {string} */
  const withChildren = (node) => {
    let result = '';
    let at = ts.isSourceFile(node) ? 0 : node.getStart(source);
    ts.forEachChild(node, (child) => {
      result += text.slice(at, child.getStart(source)) + line(node, child);
      at = child.getEnd();
    });
    return result + text.slice(at, node.getEnd());
  };

  /** A line of a table, left out once; anything else as it is. @param {ts.Node} parent @param {ts.Node} child */
  const line = (parent, child) => {
    const inner = told(child);
    if (!inTable(parent)) return inner;
    if (ts.isArrayLiteralExpression(parent) && !ts.isSpreadElement(child))
      return `...(globalThis.mutant === ${named(child, 'left out')} ? [] : [${inner}])`;
    if (ts.isPropertyAssignment(child))
      return `...(globalThis.mutant === ${named(child.name, 'left out')} ? {} : {${inner}})`;
    return inner;
  };

  /** @param {ts.Node} node @returns {[code: string, shown: string][]} */
  const alternatives = (node) => {
    if (ts.isBinaryExpression(node)) {
      const operator = node.operatorToken.getText(source);
      const [left, right] = [node.left.getText(source), node.right.getText(source)];
      if (operator === '&&' && ts.isObjectLiteralExpression(node.right))
        return [
          ['false', 'never'],
          [right, 'always'],
        ];
      if (EITHER_SIDE.includes(operator))
        return [
          [left, plain(node.left)],
          [right, plain(node.right)],
        ];
      const others = OPERATORS[/** @type {keyof typeof OPERATORS} */ (operator)] ?? [];
      return others.map((other) => [
        `${left} ${other} ${right}`,
        `${plain(node.left)} ${other} ${plain(node.right)}`,
      ]);
    }
    if (ts.isPrefixUnaryExpression(node) && node.operator === ts.SyntaxKind.ExclamationToken)
      return [[node.operand.getText(source), plain(node.operand)]];
    if (ts.isConditionalExpression(node))
      return [
        [node.whenTrue.getText(source), plain(node.whenTrue)],
        [node.whenFalse.getText(source), plain(node.whenFalse)],
      ];
    if (ts.isNumericLiteral(node) && isThreshold(node)) {
      const value = Number(node.text.replaceAll('_', ''));
      return [[String(value * 2 + 1), String(value * 2 + 1)]];
    }
    if (ts.isIfStatement(node.parent) && node.parent.expression === node)
      return [
        ['false', 'false'],
        ['true', 'true'],
      ];
    return [];
  };
  return withChildren(source);
}

/** @param {ts.Node} node @returns {boolean} */
const isInFunction = (node) =>
  ts.isFunctionLike(node) || (node.parent !== undefined && isInFunction(node.parent));

/** A number that a rule is made of: a constant of the file. @param {ts.Node} node */
const isThreshold = (node) => {
  let at = node.parent;
  while (ts.isAsExpression(at)) at = at.parent;
  return ts.isVariableDeclaration(at) && ts.isSourceFile(at.parent.parent.parent);
};

/** Types, imports and names are no expressions. @param {ts.Node} node */
const isExpressionPlace = (node) =>
  ts.isExpression(node) && !ts.isTypeNode(node) && !isInType(node) && node.parent !== undefined;

/** @param {ts.Node} node @returns {boolean} */
const isInType = (node) =>
  node.parent !== undefined &&
  (ts.isTypeNode(node.parent) || ts.isLiteralTypeNode(node.parent) || ts.isTypeElement(node.parent));

/** @param {ts.Node} node @returns {boolean} */
function inTable(node) {
  if (!ts.isArrayLiteralExpression(node) && !ts.isObjectLiteralExpression(node)) return false;
  let at = node.parent;
  while (at && !ts.isVariableDeclaration(at)) {
    if (ts.isFunctionLike(at)) return false;
    at = at.parent;
  }
  const isLineOfObject =
    ts.isObjectLiteralExpression(node.parent) || ts.isArrayLiteralExpression(node.parent);
  return at !== undefined && TABLES.test(at.name.getText()) && !isLineOfObject;
}

/** @param {string} code */
const shortened = (code) => (code.length > 70 ? `${code.slice(0, 67)}…` : code);
