import { svelte } from '@sveltejs/vite-plugin-svelte';
import { svelteTesting } from '@testing-library/svelte/vite';
import type { Plugin } from 'vite';
import { VitePWA } from 'vite-plugin-pwa';
import { defineConfig } from 'vitest/config';

/** Vite's dev server puts styles into the page by script; the strict policy of index.html lets only these in. */
const DEV_NONCE = 'dev';
const devStyles: Plugin = {
  name: 'dev-styles',
  apply: (_, { command, isPreview }) => command === 'serve' && !isPreview,
  config: () => ({ html: { cspNonce: DEV_NONCE } }),
  transformIndexHtml: {
    order: 'pre',
    handler: (html) => html.replace("style-src 'self'", `style-src 'self' 'nonce-${DEV_NONCE}'`),
  },
};

/** Builds our own service worker, with the list of files that it keeps. Big icons are the system's, once, at installing. */
const offline = VitePWA({
  strategies: 'injectManifest',
  srcDir: 'src/app',
  filename: 'service-worker.ts',
  injectRegister: false,
  manifest: false,
  includeManifestIcons: false,
  injectManifest: {
    rollupFormat: 'iife',
    globPatterns: ['**/*.{html,js,css,woff2,json,svg,webmanifest}'],
  },
});

/** The denoiser comes in the ear's pack: its glue is kept from having a second copy built in, and from asking for Node. */
const denoiserFromPack: Plugin = {
  name: 'denoiser-from-pack',
  enforce: 'pre',
  transform: {
    filter: { id: /rnnoise-wasm\/rnnoise\.js$/ },
    handler: (code) =>
      code
        .replace('new URL("rnnoise.wasm",import.meta.url).href', '"rnnoise.wasm"')
        .replace('await import("module")', '{}'),
  },
};

/**
 * What comes in one script and one style sheet each, with all that it takes: a phone far from its mast waits for each file
 * anew. The first screen; what keeps a batch; its bench; the start of one. A part that is listed later takes what is left.
 */
const PARTS = [
  { name: 'first', tags: ['$initial' as const] },
  // The school arrives at its questions as the bench at its acts, and needs nothing else of it.
  { name: 'arrive-at', test: /ui\/bench\/arrive-at\.ts$/ },
  { name: 'batch', test: /(workflow\/journal|procedure\/step)\.ts$/ },
  { name: 'bench', test: /app\/(BatchRoute\.svelte|hands-free\.browser\.ts)$/ },
  { name: 'start', test: /app\/StartRoute\.svelte$/ },
];

const nightly = process.env['NIGHTLY'] === '1';

export default defineConfig({
  base: './',
  plugins: [svelte({ configFile: false }), devStyles, offline],
  build: {
    assetsInlineLimit: 0,
    modulePreload: { polyfill: false },
    rolldownOptions: { output: { codeSplitting: { groups: PARTS } } },
  },
  worker: { format: 'es', plugins: () => [denoiserFromPack] },
  test: {
    projects: [
      {
        extends: true,
        test: {
          name: 'node',
          environment: 'node',
          // Nothing below the screens keeps what another spec could trip over, and a fresh worker each costs a minute.
          isolate: false,
          include: ['src/**/*.test.ts', 'tests/**/*.test.ts'],
          exclude: ['**/*.svelte.test.ts', 'tests/browser/**', ...(nightly ? [] : ['tests/nightly/**'])],
          testTimeout: nightly ? 600_000 : 20_000,
        },
      },
      {
        extends: true,
        plugins: [svelteTesting()],
        test: {
          name: 'dom',
          environment: 'happy-dom',
          include: ['src/**/*.svelte.test.ts'],
          setupFiles: ['tests/tools/dom-setup.ts'],
        },
      },
    ],
  },
});
