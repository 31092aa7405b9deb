/** Bundles the layout worker as the packaged server does, for tests that run it. */
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build } from 'esbuild';

export interface Bundle {
  readonly path: string;
  remove(): Promise<void>;
}

/** `entry` is a path from the root of the project, or code that imports from there. */
export async function bundled(entry: { readonly file: string } | { readonly code: string }): Promise<Bundle> {
  const folder = await mkdtemp(join(tmpdir(), 'layout-'));
  const root = fileURLToPath(new URL('../..', import.meta.url));
  const path = join(folder, 'bundle.cjs');
  await build({
    ...('file' in entry
      ? { entryPoints: [join(root, entry.file)] }
      : { stdin: { contents: entry.code, resolveDir: root, loader: 'ts' } }),
    outfile: path,
    bundle: true,
    platform: 'node',
    format: 'cjs',
    logLevel: 'error',
  });
  return { path, remove: () => rm(folder, { recursive: true }) };
}
