/** Output that is committed beside its source and compared with what comes out today; `UPDATE=1` writes it anew. */
import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { dirname } from 'node:path';
import { expect } from 'vitest';

export function expectCommitted(path: string, text: string): void {
  if (process.env['UPDATE'] === '1') {
    mkdirSync(dirname(path), { recursive: true });
    writeFileSync(path, text);
  }
  expect(existsSync(path), `${path} is not there; UPDATE=1 writes it`).toBe(true);
  expect(readFileSync(path, 'utf8'), `${path} is out of date; look at what changed, then UPDATE=1`).toBe(text);
}
