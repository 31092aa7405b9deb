// Makes dist/: what the extension, the server and the command run from. `--production` leaves out source maps.
import { existsSync } from 'node:fs';
import { rm } from 'node:fs/promises';
import { build } from 'esbuild';

const production = process.argv.includes('--production');

const shared = {
  bundle: true,
  outdir: 'dist',
  target: 'es2022',
  minify: true,
  keepNames: true,
  sourcemap: production ? false : 'linked',
  legalComments: 'none',
  logLevel: 'warning',
};

const node = {
  ...shared,
  platform: 'node',
  target: 'node20.10',
  format: 'cjs',
  outExtension: { '.js': '.cjs' },
  inject: ['server/object-group-by.mjs'],
};

const browser = { ...shared, platform: 'browser', format: 'iife', mainFields: ['browser', 'module', 'main'] };

/** The layout library is large and its licence another: it stays a file of its own, loaded with the first picture. */
const layoutApart = {
  name: 'layout-apart',
  setup({ onResolve }) {
    onResolve({ filter: /^elkjs\/lib\/elk\.bundled\.js$/ }, () => ({ path: './elk.cjs', external: true }));
  },
};

// For as long as the server is being written.
function present(entries) {
  return Object.fromEntries(Object.entries(entries).filter(([, file]) => existsSync(file)));
}

await rm('dist', { recursive: true, force: true });
await Promise.all([
  build({ ...node, inject: [], external: ['vscode'], entryPoints: { extension: 'extension/main.ts' } }),
  build({
    ...browser,
    format: 'cjs',
    outExtension: { '.js': '.cjs' },
    external: ['vscode'],
    entryPoints: { 'extension-web': 'extension/main-web.ts' },
  }),
  build({ ...browser, entryPoints: { preview: 'extension/webview/main.ts' } }),
  build({ ...browser, entryPoints: ['extension/webview/preview.css'] }),
  build({
    ...node,
    plugins: [layoutApart],
    entryPoints: present({
      server: 'server/main-node.ts',
      'layout-worker': 'server/layout/worker.ts',
      linewright: 'server/command/main.ts',
    }),
  }),
  build({ ...browser, entryPoints: present({ 'server-browser': 'server/main-browser.ts' }) }),
  build({ ...node, inject: [], entryPoints: { elk: 'elkjs/lib/elk.bundled.js' } }),
]);
