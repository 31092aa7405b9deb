/** The life of documents at a real server: opened, closed unsaved, untitled, old sides of a diff, files that come and go. */
import { symlinkSync } from 'node:fs';
import { join } from 'node:path';
import { afterEach, describe, expect, test } from 'vitest';
import { stock, van } from './support/circuits.ts';
import { atMark, openWindow, type Window, type WindowOptions } from './support/window.ts';

const open: Window[] = [];
const window = async (options?: WindowOptions): Promise<Window> => {
  const opened = await openWindow(options);
  open.push(opened);
  return opened;
};
afterEach(async () => {
  for (const each of open.splice(0)) await each.end();
});

const codes = (diagnostics: readonly { code?: unknown }[]) => diagnostics.map(({ code }) => code);

test('the server says what it can do, with the kinds of code actions and what starts completion', async () => {
  const { greeting } = await window();
  const { codeActionProvider, completionProvider, renameProvider, semanticTokensProvider } = greeting.capabilities;
  expect(codeActionProvider).toEqual({ codeActionKinds: ['quickfix', 'source.fixAll.linewright'] });
  expect(completionProvider?.triggerCharacters).toContain('.');
  expect(renameProvider).toEqual({ prepareProvider: true });
  expect(semanticTokensProvider).toBeDefined();
});

test('it ends when it is told to', async () => {
  const opened = await openWindow();
  expect(await opened.end()).toBe(0);
});

describe('a file that others use', () => {
  test('is used as the editor has it, and as the disk has it once it is closed unsaved', async () => {
    const w = await window({ files: { 'stock.circuit': stock } });
    expect(codes(await w.open('van.circuit', van))).not.toContain('unknown-name');
    const renamed = w.nextDiagnostics('van.circuit');
    await w.open('stock.circuit', stock.replace('stock line', 'stock other'));
    expect(codes(await renamed)).toContain('unknown-name');
    const back = w.nextDiagnostics('van.circuit');
    w.close('stock.circuit');
    expect(codes(await back)).not.toContain('unknown-name');
  });

  test('is noticed when it appears on disk, and when it goes', async () => {
    const w = await window();
    expect(codes(await w.open('van.circuit', van))).toContain('use-failed');
    w.writeFile('stock.circuit', stock);
    const found = w.nextDiagnostics('van.circuit');
    w.tellChanged('stock.circuit', 1);
    expect(codes(await found)).not.toContain('use-failed');
    const lost = w.nextDiagnostics('van.circuit');
    w.removeFile('stock.circuit');
    w.tellChanged('stock.circuit', 3);
    expect(codes(await lost)).toContain('use-failed');
  });

  test('may use the first one back', async () => {
    const w = await window({ files: { 'stock.circuit': `use "van.circuit"\n${stock}`, 'van.circuit': van } });
    expect(codes(await w.open('van.circuit', van))).not.toContain('use-failed');
    const again = await w.type('van.circuit', `${van}\n`);
    expect(codes(again)).not.toContain('use-failed');
  });

  test.each([
    ['is not there', 'gone.circuit', 'There is no file'],
    ['is a folder', 'parts', 'is a folder'],
    ['is the file itself', 'van.circuit', 'does not use itself'],
    ['lies outside the open folder', '../outside.circuit', 'outside the open folder'],
    ['is named by an absolute path', '/etc/passwd', 'not a relative path'],
    ['is named by an address', 'https://example.org/stock.circuit', 'not a relative path'],
    ['is no circuit file', 'notes.txt', 'cannot be read'],
    ['is no text', 'picture.circuit', 'cannot be read'],
  ])('%s: the word says so', async (_, path, words) => {
    const files = {
      'garage/parts/stock.circuit': stock,
      'garage/notes.txt': 'notes',
      'garage/picture.circuit': 'PNG\u0000\u0001\u0002',
      'outside.circuit': stock,
    };
    const w = await window({ files, folders: ['garage'] });
    const diagnostics = await w.open('garage/van.circuit', van.replace('stock.circuit', path));
    const failed = diagnostics.filter(({ code }) => code === 'use-failed');
    expect(failed).toHaveLength(1);
    expect(failed[0]?.message).toContain(words);
    expect(failed[0]?.range.start).toEqual({ line: 0, character: 4 });
  });

  test('is not followed out of the folder by a link', async () => {
    const w = await window({ files: { 'outside.circuit': stock, 'garage/other.circuit': '' }, folders: ['garage'] });
    symlinkSync(join(w.folder, 'outside.circuit'), join(w.folder, 'garage/stock.circuit'));
    const [failed] = (await w.open('garage/van.circuit', van)).filter(({ code }) => code === 'use-failed');
    expect(failed?.message).toContain('outside the open folder');
  });

  test('is confined to the folder of the file where no folder is open', async () => {
    const w = await window({ files: { 'garage/stock.circuit': stock, 'outside.circuit': stock }, folders: [] });
    expect(codes(await w.open('garage/van.circuit', van))).not.toContain('use-failed');
    const outside = await w.type('garage/van.circuit', van.replace('stock.circuit', '../outside.circuit'));
    expect(codes(outside)).toContain('use-failed');
  });

  test('may lie in the same one of two open folders and not in the other', async () => {
    const files = { 'one/stock.circuit': stock, 'two/stock.circuit': stock };
    const w = await window({ files, folders: ['one', 'two'] });
    expect(codes(await w.open('one/van.circuit', van))).not.toContain('use-failed');
    const other = await w.open('two/van.circuit', van.replace('stock.circuit', '../one/stock.circuit'));
    expect(codes(other)).toContain('use-failed');
  });
});

test('an untitled document is checked, and closing it leaves the server alive', async () => {
  const w = await window({ files: { 'stock.circuit': stock } });
  w.openUri('untitled:Untitled-1', 'tee loose {\n  ports a, b: 3/8-24\n}\n');
  const first = await w.connection.sendRequest<{ name: string }[]>('textDocument/documentSymbol', {
    textDocument: { uri: 'untitled:Untitled-1' },
  });
  expect(first.map(({ name }) => name)).toEqual(['loose']);
  w.closeUri('untitled:Untitled-1');
  expect(codes(await w.open('van.circuit', van))).not.toContain('syntax');
  expect(codes(await w.type('van.circuit', `${van}tee`))).toContain('syntax');
});

test('the old side of a diff is let lie: neither checked nor found', async () => {
  const w = await window({ files: { 'stock.circuit': stock } });
  const old = w.uriOf('van.circuit').replace('file:', 'git:');
  w.openUri(old, van.replace('main', 'old-main'));
  await w.open('van.circuit', van);
  const symbols = await w.connection.sendRequest<{ name: string }[]>('workspace/symbol', { query: 'main' });
  expect(symbols.map(({ name }) => name)).toEqual(['main']);
  w.closeUri(old);
  expect(codes(await w.type('van.circuit', `${van}\n`))).not.toContain('syntax');
});

test('a closed file has no diagnostics left', async () => {
  const w = await window({ files: { 'stock.circuit': stock } });
  expect(await w.open('broken.circuit', 'tee')).not.toEqual([]);
  const cleared = w.nextDiagnostics('broken.circuit');
  w.close('broken.circuit');
  expect(await cleared).toEqual([]);
});

test('typed fast, the last text wins', async () => {
  const w = await window({ files: { 'stock.circuit': stock } });
  await w.open('van.circuit', van);
  const end = { line: van.split('\n').length - 1, character: 0 };
  for (const [index, letter] of [...'tee last {}'].entries()) {
    w.edit('van.circuit', { start: { ...end, character: index }, end: { ...end, character: index } }, letter);
  }
  const diagnostics = await w.settled('van.circuit');
  expect(codes(diagnostics)).not.toContain('syntax');
  const symbols = await w.ask<{ name: string }[]>('textDocument/documentSymbol', 'van.circuit');
  expect(symbols.map(({ name }) => name)).toContain('last');
});

test('asked right behind a key, it answers for the text with that key', async () => {
  const w = await window({ files: { 'stock.circuit': stock } });
  await w.open('van.circuit', van);
  const { text, position } = atMark(van.replace('from main.out', 'from main.¦'));
  const typed = w.type('van.circuit', text);
  const answer = await w.ask<{ items: { label: string }[] }>('textDocument/completion', 'van.circuit', { position });
  expect(answer.items.map(({ label }) => label)).toEqual(['out']);
  await typed;
});
