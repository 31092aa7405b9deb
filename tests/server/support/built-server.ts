/** Bundles the server as it ships into a folder of its own, once for each test file. */
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { build } from 'esbuild';
import { afterAll } from 'vitest';
import { root } from '../../architecture/sources.ts';

const shared = {
  bundle: true,
  platform: 'node',
  format: 'cjs',
  target: 'node20.10',
  absWorkingDir: root,
  logLevel: 'warning',
} as const;

const folder = mkdtempSync(join(tmpdir(), 'linewright-server-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

/** Path of the bundled server; its layout thread lies beside it. */
export const builtServer: Promise<string> = bundle();

async function bundle(): Promise<string> {
  const server = join(folder, 'server.cjs');
  await Promise.all([
    build({
      ...shared,
      entryPoints: ['server/main-node.ts'],
      inject: ['server/object-group-by.mjs'],
      external: ['elkjs/lib/elk.bundled.js'],
      outfile: server,
    }),
    build({ ...shared, entryPoints: ['server/layout/worker.ts'], outfile: join(folder, 'layout-worker.cjs') }),
  ]);
  return server;
}
