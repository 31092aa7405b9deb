/** Builds the project as it ships, into a folder of its own, so that a test meets what its sources say today. */
import { execFileSync } from 'node:child_process';
import { cpSync, mkdtempSync, realpathSync, rmSync, symlinkSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { root } from '../architecture/sources.ts';

export interface BuiltProject {
  /** Its root, with `dist`, `examples` and `package.json`. */
  readonly folder: string;
  remove(): void;
}

const linked = ['language', 'server', 'extension', 'node_modules', 'package.json', 'esbuild.config.mjs'];

export function buildProject(): BuiltProject {
  const folder = realpathSync(mkdtempSync(join(tmpdir(), 'linewright-built-')));
  for (const name of linked) symlinkSync(join(root, name), join(folder, name));
  cpSync(join(root, 'examples'), join(folder, 'examples'), { recursive: true });
  execFileSync(process.execPath, ['esbuild.config.mjs', '--production'], { cwd: folder, stdio: 'pipe' });
  return { folder, remove: () => rmSync(folder, { recursive: true, force: true }) };
}
