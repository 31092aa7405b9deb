/** A folder of circuit files to be opened, changed and thrown away. */
import { cpSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';

export interface Workspace {
  readonly folder: string;
  readonly remove: () => void;
}

export interface WorkspaceOptions {
  /** Copied as they are, examples say. */
  readonly folders?: readonly string[];
  readonly files?: Readonly<Record<string, string>>;
}

export function makeWorkspace({ folders = [], files = {} }: WorkspaceOptions): Workspace {
  const folder = mkdtempSync(path.join(tmpdir(), 'linewright-circuits-'));
  for (const source of folders) cpSync(source, folder, { recursive: true });
  for (const [name, text] of Object.entries(files)) writeFileSync(path.join(folder, name), text);
  return { folder, remove: () => rmSync(folder, { recursive: true, force: true }) };
}
