/** The editor reads the findings that the command prints in a task. */
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { expect, test } from 'vitest';
import { run } from '../../server/command/run.ts';
import { unpainted } from '../../server/command/terminal.ts';
import { withWrongNut } from '../end-to-end/support/circuits.ts';

const root = path.resolve(import.meta.dirname, '../..');

interface Matcher {
  readonly pattern: { readonly regexp: string; readonly file: number; readonly line: number };
}

test('file, place, severity, rule and sentence are taken from a line', async () => {
  const manifest = JSON.parse(readFileSync(path.join(root, 'package.json'), 'utf8'));
  const [{ pattern }]: readonly [Matcher] = manifest.contributes.problemMatchers;
  const folder = mkdtempSync(path.join(tmpdir(), 'linewright-matcher-'));
  try {
    writeFileSync(path.join(folder, 'car.circuit'), withWrongNut);
    const lines: string[] = [];
    const print = (text: string) => lines.push(...text.split('\n'));
    expect(await run(['check', 'car.circuit'], { folder, home: root, paint: unpainted, print, complain: print })).toBe(
      1,
    );
    const [first] = lines.flatMap((line) => {
      const match = new RegExp(pattern.regexp).exec(line);
      return match === null ? [] : [match];
    });
    expect(first?.[pattern.file]).toBe('car.circuit');
    expect(withWrongNut.split('\n')[Number(first?.[pattern.line]) - 1]).toContain('main.primary.a');
    expect(first?.slice(4, 6)).toEqual(['error', 'thread-mismatch']);
    expect(first?.[6]).toMatch(/^The nut of main-to-front-tee/);
  } finally {
    rmSync(folder, { recursive: true });
  }
});
