// Makes dist/: what the extension, the server and the command run from. `--production` leaves out source maps.
import { mkdir, readdir, rm, writeFile } from 'node:fs/promises';
import { fileURLToPath } from 'node:url';
import { build } from 'esbuild';

const production = process.argv.includes('--production');

const shared = {
  bundle: true,
  outdir: 'dist',
  target: 'es2022',
  minify: true,
  sourcemap: production ? false : 'linked',
  legalComments: 'none',
  logLevel: 'warning',
  metafile: true,
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

/** What a few of our own sources export, for style sheets that are made of it. */
async function load(contents) {
  const stdin = { contents, resolveDir: fileURLToPath(new URL('.', import.meta.url)), loader: 'ts' };
  const { outputFiles } = await build({ stdin, bundle: true, write: false, format: 'esm', logLevel: 'warning' });
  const code = Buffer.from(outputFiles[0].contents).toString('base64');
  return import(`data:text/javascript;base64,${code}`);
}

/** The picture's own style rules and tones, for the preview's page to start from. */
async function writePictureStyles() {
  const { themeDeclarations, themes, windowStyles } = await load(`
    export { themeDeclarations, windowStyles } from './language/schematic/svg/styles.ts';
    export { themes } from './language/schematic/themes.ts';`);
  const kinds = [
    ['vscode-light', themes.light],
    ['vscode-dark', themes.dark],
    ['vscode-high-contrast', themes['high-contrast']],
    ['vscode-high-contrast-light', themes.light],
  ];
  const tones = kinds.map(([kind, theme]) => `[data-vscode-theme-kind="${kind}"] {\n${themeDeclarations(theme)}\n}`);
  await writeFile('dist/picture.css', `${[windowStyles, ...tones].join('\n')}\n`);
}

/** The style that a sheet is printed with, for its page in the window to start from. */
async function writePaperStyle() {
  const { pageStyle } = await load(`export { pageStyle } from './language/sheets/write/page-style.ts';`);
  await writeFile('dist/paper.css', pageStyle);
}

await mkdir('dist', { recursive: true });
const bundles = await Promise.all([
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
  build({ ...browser, entryPoints: { sheet: 'extension/webview/sheet/main.ts' } }),
  build({ ...browser, entryPoints: ['extension/webview/sheet/sheet.css'] }),
  build({
    ...node,
    plugins: [layoutApart],
    entryPoints: {
      server: 'server/main-node.ts',
      'layout-worker': 'server/layout/worker.ts',
      linewright: 'server/command/main.ts',
    },
  }),
  build({ ...browser, entryPoints: { 'server-browser': 'server/main-browser.ts' } }),
  build({ ...node, inject: [], entryPoints: { elk: 'elkjs/lib/elk.bundled.js' } }),
]);
await writePictureStyles();
await writePaperStyle();

// Whose work is in the bundles, so that a test can tell whether the notices name them all.
const inputs = bundles.flatMap(({ metafile }) => Object.keys(metafile.inputs));
const packages = inputs.flatMap((file) => file.match(/.*node_modules\/((?:@[^/]+\/)?[^/]+)/)?.[0] ?? []);
await writeFile('dist/packages.json', JSON.stringify([...new Set(packages)].sort(), undefined, 2));

// What an earlier build left behind; the new files were written over the old ones, so that nobody finds one missing.
const bundled = bundles.flatMap(({ metafile }) => Object.keys(metafile.outputs));
const written = new Set(['dist/picture.css', 'dist/paper.css', ...bundled]);
const ours = (await readdir('dist')).filter((name) => /\.(cjs|js|css|map)$/.test(name)).map((name) => `dist/${name}`);
await Promise.all(ours.filter((file) => !written.has(file)).map((file) => rm(file)));
