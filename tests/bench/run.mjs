// `npm run bench`: builds what is measured and what measures, then measures.
import { execFileSync } from 'node:child_process';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { build } from 'esbuild';

const root = fileURLToPath(new URL('../..', import.meta.url));
const outfile = `${root}.cache/bench/bench.mjs`;

execFileSync(process.execPath, ['esbuild.config.mjs', '--production'], { cwd: root, stdio: 'inherit' });
await build({
  absWorkingDir: root,
  entryPoints: ['tests/bench/main.ts'],
  inject: ['server/object-group-by.mjs'],
  bundle: true,
  platform: 'node',
  format: 'esm',
  packages: 'external',
  outfile,
  logLevel: 'warning',
});
const { bench } = await import(pathToFileURL(outfile).href);
await bench({ root, sizes: process.argv.slice(2).map(Number).filter(Number.isFinite) });
