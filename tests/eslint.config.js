import { fileURLToPath } from 'node:url';
import svelte from 'eslint-plugin-svelte';
import { defineConfig, globalIgnores } from 'eslint/config';
import ts from 'typescript-eslint';
import { sumDocstring } from './tools/sum-docstring.mjs';

const tsconfigRootDir = fileURLToPath(new URL('..', import.meta.url));

const CODE = ['**/*.{ts,js,mjs,svelte}'];
const TESTS = ['**/*.test.ts', 'tests/**'];
const BELOW_THE_ADAPTERS = ['src/{domain,procedure,workflow,voice,timers,storage,text,guide,ui}/**'];

const STATIC_STYLE = {
  selector: 'SvelteAttribute[key.name="style"]',
  message: 'The page policy blocks a style attribute in markup: use a class, or style:property={value}.',
};
const CLOCK_AND_CHANCE = [
  ['MemberExpression[object.name="Date"][property.name="now"]', 'Date.now()'],
  ['NewExpression[callee.name="Date"][arguments.length=0]', 'new Date() without an argument'],
  ['CallExpression[callee.name="Date"]', 'Date()'],
  ['MemberExpression[object.name="Math"][property.name="random"]', 'Math.random()'],
  ['MemberExpression[object.name="performance"][property.name="now"]', 'performance.now()'],
  ['MemberExpression[property.name=/^(randomUUID|getRandomValues)$/]', 'crypto'],
].map(([selector, what]) => ({
  selector,
  message: `${what}: only a *.browser.ts adapter reads the clock or draws by chance; take the value as an argument.`,
}));

export default defineConfig(
  globalIgnores(['dist/', 'test-results/', 'screenshots/', 'public/', 'src/voice/ear/engine/*.js']),
  {
    files: CODE,
    extends: [ts.configs.strictTypeChecked],
    linterOptions: { noInlineConfig: true },
    languageOptions: {
      parserOptions: { projectService: true, tsconfigRootDir, extraFileExtensions: ['.svelte'] },
    },
    rules: {
      'max-lines': ['error', { max: 200, skipBlankLines: true, skipComments: true }],
      'max-lines-per-function': ['error', { max: 40, skipBlankLines: true, skipComments: true }],
      'no-restricted-syntax': ['error', STATIC_STYLE],
      '@typescript-eslint/no-confusing-void-expression': ['error', { ignoreArrowShorthand: true }],
      '@typescript-eslint/restrict-template-expressions': [
        'error',
        { allowNumber: true, allowBoolean: true },
      ],
      '@typescript-eslint/consistent-type-imports': 'error',
      '@typescript-eslint/no-misused-spread': [
        'error',
        { allow: [{ from: 'lib', name: 'String' }, 'string'] },
      ],
      '@typescript-eslint/no-unused-vars': ['error', { argsIgnorePattern: '^_', varsIgnorePattern: '^_$' }],
      '@typescript-eslint/switch-exhaustiveness-check': 'error',
    },
  },
  {
    files: ['**/*.svelte', '**/*.svelte.ts'],
    extends: [svelte.configs.recommended],
    languageOptions: { parserOptions: { parser: ts.parser } },
    rules: { 'svelte/comment-directive': 'off', 'prefer-const': 'off' },
  },
  {
    files: BELOW_THE_ADAPTERS,
    ignores: ['**/*.browser.ts'],
    rules: { 'no-restricted-syntax': ['error', STATIC_STYLE, ...CLOCK_AND_CHANCE] },
  },
  {
    files: ['src/domain/**/*.ts'],
    ignores: TESTS,
    plugins: { house: { rules: { 'sum-docstring': sumDocstring } } },
    rules: { 'house/sum-docstring': 'error' },
  },
  {
    files: ['src/domain/sums/*.ts'],
    ignores: TESTS,
    rules: { 'house/sum-docstring': ['error', { sums: true }] },
  },
  { files: ['src/text/**'], rules: { 'max-lines': 'off' } },
  {
    files: TESTS,
    rules: { 'max-lines-per-function': 'off', '@typescript-eslint/no-non-null-assertion': 'off' },
  },
  {
    files: ['tests/**/*.mjs', 'tests/eslint.config.js'],
    extends: [ts.configs.disableTypeChecked],
  },
);
