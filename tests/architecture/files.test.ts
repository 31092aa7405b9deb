import { execFileSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { basename, join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { filesOf, ownSources, root } from './sources.ts';

const sources = ownSources();
const linesOf = (text: string): number => text.split('\n').length - 1;

describe('files', () => {
  it('stay under 400 lines, half of them under 150', () => {
    const lengths = sources.map(({ path, text }) => ({ path, lines: linesOf(text) })).sort((a, b) => a.lines - b.lines);
    expect(lengths.filter(({ lines }) => lines > 400)).toEqual([]);
    expect(lengths[Math.floor(lengths.length / 2)]?.lines).toBeLessThanOrEqual(150);
  });

  it('have names in kebab-case that say what they are about', () => {
    const odd = sources
      .map(({ path }) => basename(path))
      .filter((name) => !/^[a-z0-9]+(-[a-z0-9]+)*(\.d)?\.ts$/.test(name));
    const vague = sources
      .filter(({ path }) => /(^|[/-])(utils?|helpers?|managers?|common|misc)([/.-]|$)/.test(path))
      .map(({ path }) => path);
    expect([...odd, ...vague]).toEqual([]);
  });

  it('begin with a sentence that says what they are for', () => {
    const mute = sources.filter(({ text }) => !/^(#![^\n]*\n)?\/\*\*/.test(text)).map(({ path }) => path);
    expect(mute).toEqual([]);
  });

  it('hold no any, no silenced compiler, no leftovers', () => {
    const weak = /: any\b|\bas any\b|@ts-ignore|@ts-expect-error|\bTODO\b|\bFIXME\b|console\.debug/;
    expect(sources.filter(({ text }) => weak.test(text)).map(({ path }) => path)).toEqual([]);
  });

  it('leave only what belongs there at the top level', () => {
    const known =
      /^(README\.md|DEVELOPERS\.md|package(-lock|\.nls(\.[a-z-]+)?)?\.json|language|server|extension|examples|tests|tsconfig\.json|langium-config\.json|biome\.json|[a-z.-]+\.config\.(ts|mjs)|\..+|CHANGELOG\.md|LICENSE(\.md|\.txt)?|THIRD-PARTY.*)$/;
    const top = new Set(filesOf('.').map((path) => path.split('/')[0] ?? ''));
    expect([...top].filter((name) => !known.test(name))).toEqual([]);
  });
});

describe('generated code', () => {
  it('is what the grammar gives', () => {
    const folder = mkdtempSync(join(tmpdir(), 'linewright-grammar-'));
    try {
      const config = JSON.parse(readFileSync(join(root, 'langium-config.json'), 'utf8'));
      const fresh = join(folder, 'generated');
      const polyfill = join(root, 'tests/support/object-group-by.mjs');
      execFileSync(
        process.execPath,
        [`--import=${polyfill}`, '--input-type=module', '--eval', generate(config, fresh)],
        { cwd: root, encoding: 'utf8' },
      );
      for (const file of ['ast.ts', 'grammar.ts', 'module.ts']) {
        const committed = readFileSync(join(root, 'language/grammar/generated', file), 'utf8');
        expect(readFileSync(join(fresh, file), 'utf8'), `${file}: run npm run generate`).toBe(committed);
      }
    } finally {
      rmSync(folder, { recursive: true, force: true });
    }
  });
});

/** The generator is a command line program without a flag for the place of its output, so it gets a changed configuration. */
function generate(config: Record<string, unknown>, out: string): string {
  const changed = { ...config, out };
  return `
    import { writeFileSync } from 'node:fs';
    import { execFileSync } from 'node:child_process';
    const file = ${JSON.stringify(join(out, '..', 'langium-config.json'))};
    writeFileSync(file, JSON.stringify({ ...${JSON.stringify(changed)}, languages: ${JSON.stringify(config['languages'])}.map((language) => ({ ...language, grammar: ${JSON.stringify(root)} + language.grammar })) }));
    execFileSync(process.execPath, ['--import=' + ${JSON.stringify(join(root, 'tests/support/object-group-by.mjs'))}, ${JSON.stringify(join(root, 'node_modules/langium-cli/bin/langium.js'))}, 'generate', '--file', file], { stdio: 'inherit' });
  `;
}

describe('packages', () => {
  it('of the protocol come in one copy', () => {
    const lock: { packages: Record<string, unknown> } = JSON.parse(
      readFileSync(join(root, 'package-lock.json'), 'utf8'),
    );
    const names = [
      'vscode-jsonrpc',
      'vscode-languageserver-protocol',
      'vscode-languageserver-types',
      'vscode-languageserver-textdocument',
    ];
    for (const name of names) {
      const copies = Object.keys(lock.packages).filter(
        (path) => path === `node_modules/${name}` || path.endsWith(`/node_modules/${name}`),
      );
      expect(copies, name).toEqual([`node_modules/${name}`]);
    }
  });

  it('name no download address in the lock', () => {
    for (const path of filesOf('package-lock.json', 'tests/**/package-lock.json')) {
      expect(readFileSync(join(root, path), 'utf8'), path).not.toMatch(/"resolved": "https?:/);
    }
  });
});
