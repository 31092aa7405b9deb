/** The manifest and the code say the same: commands, activation, settings, words, files. */
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, test } from 'vitest';

const root = path.resolve(import.meta.dirname, '../..');
const read = (name: string) => readFileSync(path.join(root, name), 'utf8');

interface Contributed {
  readonly command: string;
  readonly when?: string;
}
interface Setting {
  readonly description: string;
  readonly default: unknown;
  readonly enum?: readonly unknown[];
  readonly enumDescriptions?: readonly string[];
}
interface Manifest {
  readonly main: string;
  readonly browser: string;
  readonly icon: string;
  readonly l10n: string;
  readonly engines: { readonly vscode: string };
  readonly devDependencies: Readonly<Record<string, string>>;
  readonly dependencies?: unknown;
  readonly activationEvents: readonly string[];
  readonly capabilities: Readonly<Record<string, { readonly supported: unknown }>>;
  readonly contributes: {
    readonly commands: readonly { readonly command: string; readonly title: string }[];
    readonly menus: Readonly<Record<string, readonly Contributed[]>>;
    readonly keybindings: readonly Contributed[];
    readonly configuration: { readonly properties: Readonly<Record<string, Setting>> };
    readonly languages: readonly { readonly id: string; readonly extensions: readonly string[] }[];
  };
}

const manifest: Manifest = JSON.parse(read('package.json'));
const sentences: Readonly<Record<string, string>> = JSON.parse(read('package.nls.json'));
const sources = readdirSync(path.join(root, 'extension'), { recursive: true, encoding: 'utf8' })
  .filter((name) => name.endsWith('.ts'))
  .map((name) => read(path.join('extension', name)));
const { contributes } = manifest;
const commandIds = contributes.commands.map(({ command }) => command).sort();

describe('commands', () => {
  test('are the rows of the table in the code', () => {
    const rows = [...read('extension/commands.ts').matchAll(/^ {2}'(linewright\.\w+)':/gm)].map(([, id]) => id);
    expect(rows.sort()).toEqual(commandIds);
  });

  test('are the only ones of ours that menus, keys and the walkthrough name', () => {
    const named =
      JSON.stringify([contributes.menus, contributes.keybindings]).match(/"command":"(linewright\.\w+)"/g) ?? [];
    const linked = Object.values(sentences).flatMap((sentence) => sentence.match(/command:linewright\.\w+/g) ?? []);
    for (const text of [...named, ...linked]) expect(commandIds).toContain(/linewright\.\w+/.exec(text)?.[0]);
    expect(named.length).toBeGreaterThan(5);
  });

  test('have keys only in our own language', () => {
    for (const { when } of contributes.keybindings) expect(when).toContain('editorLangId == linewright');
  });
});

test('the preview and the sheets are restored: the activation events carry the very view types of the code', () => {
  const [preview, sheet] = ['preview/previews.ts', 'sheets/sheets.ts'].map(
    (file) => /viewType = '([^']+)'/.exec(read(`extension/${file}`))?.[1],
  );
  expect(manifest.activationEvents).toEqual([`onWebviewPanel:${preview}`, `onWebviewPanel:${sheet}`]);
  for (const viewType of [preview, sheet])
    expect(JSON.stringify(contributes.menus)).toContain(`activeWebviewPanelId == '${viewType}'`);
});

test('the lenses that the server puts over a file lead to commands that there are', () => {
  const lenses = read('server/lsp/code-lenses.ts').match(/linewright\.\w+/g) ?? [];
  expect(lenses.length).toBe(4);
  for (const command of lenses) expect(commandIds).toContain(command);
});

describe('settings', () => {
  const settings = Object.entries(contributes.configuration.properties);

  test('are at most twelve, each with one sentence and a default', () => {
    expect(settings.length).toBeLessThanOrEqual(12);
    for (const [name, { description, default: standard }] of settings) {
      expect(sentences[description.replaceAll('%', '')], name).toMatch(/^[A-Z][^.]*\.$/);
      expect(standard, name).toBeDefined();
    }
  });

  test('are read by the code under these names', () => {
    const asked = sources.flatMap((text) => [...text.matchAll(/getConfiguration\('linewright'\)\.get\('([\w.]+)'\)/g)]);
    const names = new Set(asked.map(([, name]) => `linewright.${name}`));
    // The trace is read by the language client, what the server shows in the text by the server.
    names.add('linewright.trace.server');
    for (const [, name] of read('server/lsp/settings.ts').matchAll(/said\('(\w+)'\)/g)) names.add(`linewright.${name}`);
    expect([...names].sort()).toEqual(settings.map(([name]) => name).sort());
  });

  test('with a choice say what each choice means, and the default is one of them', () => {
    for (const [name, setting] of settings.filter(([name]) => name !== 'linewright.trace.server')) {
      if (setting.enum === undefined) continue;
      expect(setting.enumDescriptions, name).toHaveLength(setting.enum.length);
      expect(setting.enum, name).toContain(setting.default);
    }
  });
});

test('every word of the manifest is in the words file, and none there is unused', () => {
  const used = new Set([...read('package.json').matchAll(/"%([\w.]+)%"/g)].map(([, key]) => key));
  expect([...used].sort()).toEqual(Object.keys(sentences).sort());
});

test('every file that the manifest names is there', () => {
  const named = [...read('package.json').matchAll(/"(?:\.\/)?(extension\/[\w./-]+)"/g)].map(([, name]) => name ?? '');
  expect(named.length).toBeGreaterThan(8);
  for (const name of named) expect(existsSync(path.join(root, name)), name).toBe(true);
});

test('the icon is a PNG of at least 128 points', () => {
  const png = readFileSync(path.join(root, manifest.icon));
  expect(png.subarray(1, 4).toString()).toBe('PNG');
  expect(png.readUInt32BE(16)).toBeGreaterThanOrEqual(128);
  expect(png.readUInt32BE(20)).toBeGreaterThanOrEqual(128);
});

test('the types are those of the oldest editor that is promised', () => {
  expect(manifest.engines.vscode).toBe(`^${manifest.devDependencies['@types/vscode']}`);
});

test('it runs on a desktop and in a browser, in restricted and in virtual workspaces', () => {
  expect(manifest.main).toBe('./dist/extension.cjs');
  expect(manifest.browser).toBe('./dist/extension-web.cjs');
  expect(manifest.capabilities['untrustedWorkspaces']?.supported).toBe(true);
  expect(manifest.capabilities['virtualWorkspaces']?.supported).toBe(true);
});

test('language and file ending are those of the code', () => {
  const documents = read('extension/client/documents.ts');
  for (const { id, extensions } of contributes.languages) {
    expect(documents).toContain(`languageId = '${id}'`);
    expect(documents).toContain(`filePattern = '**/*${extensions[0]}'`);
  }
});
