/** Texts that are no circuits: each gets a clear word at the right place, and the server lives on. */
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { stock, van } from './support/circuits.ts';
import { openWindow, positionAt, type Window } from './support/window.ts';

let w: Window;
beforeAll(async () => {
  w = await openWindow({ files: { 'stock.circuit': stock } });
  await w.open('van.circuit', van);
});
afterAll(async () => {
  await w.end();
});

const nested = `${'drum-brake a { cylinder b { '.repeat(3000)}${'}}'.repeat(3000)}`;
const errors = Array.from({ length: 1000 }, (_, index) => `tee t${index} on {\n  ports a b: 3/8\n`).join('');
const hostile = van.replace('Trial van', '<script>alert(1)</script> “q” 🚐').replace('because', 'javascript:alert(1)');

const texts: readonly (readonly [string, string])[] = [
  ['nothing', ''],
  ['only white space', ' \n\t\r\n '],
  ['a binary file', `PNG\u0000\u0001\u0002${'\u0000'.repeat(1000)}`],
  ['5 MB of text', 'tee t { ports a, b: 3/8-24 }\n'.repeat(180_000)],
  ['one line of a megabyte', 'x'.repeat(1_000_000)],
  ['a thousand errors', errors],
  ['deep nesting', nested],
  ['names with scripts, quotes and emoji', hostile],
  ['a file in another tongue', 'Bremse { Kolben 22 mm }\n制動 { 缸 22 mm }\n'],
  ['lone surrogates', `vehicle v "\ud83d" {}\n\udc00\n`],
  ['Windows line ends', van.replaceAll('\n', '\r\n')],
];

const requests = ['documentSymbol', 'foldingRange', 'documentLink', 'semanticTokens/full'] as const;
const placed = ['hover', 'completion', 'definition', 'documentHighlight'] as const;

describe.each(texts)('%s', (name, text) => {
  test('answers every request', async () => {
    const diagnostics = await w.type('van.circuit', text);
    if (name === '5 MB of text') {
      expect(diagnostics.map(({ message }) => message)).toEqual([
        expect.stringContaining('MB; circuit files are read up to 4.0 MB'),
      ]);
    }
    if (name === 'a binary file') {
      expect(diagnostics.map(({ message }) => message)).toEqual([expect.stringContaining('not a text file')]);
    }
    if (name === 'a thousand errors') expect(diagnostics.length).toBeGreaterThan(900);
    for (const request of requests) await w.ask(`textDocument/${request}`, 'van.circuit');
    const offsets = [0, Math.floor(text.length / 3), text.length];
    for (const offset of text.length > 1_000_000 ? [0] : offsets) {
      const position = positionAt(text, offset);
      for (const request of placed) await w.ask(`textDocument/${request}`, 'van.circuit', { position });
    }
    const options = { tabSize: 2, insertSpaces: true };
    await w.ask('textDocument/formatting', 'van.circuit', { options });
    const range = { start: { line: 0, character: 0 }, end: positionAt(text, text.length) };
    await w.ask('textDocument/codeAction', 'van.circuit', { range, context: { diagnostics: [] } });
    const picture = await w.connection.sendRequest<{ kind: string; svg?: string }>('linewright/picture', {
      uri: w.uriOf('van.circuit'),
      circuit: 'planned',
      theme: 'print',
      whenBroken: 'draw-what-is-left',
    });
    expect(['drawn', 'none']).toContain(picture.kind);
    expect(picture.svg ?? '').not.toMatch(/<script|onerror|javascript:/i);
  });

  test('and the next sound text is read as if nothing had been', async () => {
    const diagnostics = await w.type('van.circuit', van);
    expect(diagnostics.filter(({ code }) => code === 'syntax' || code === 'unreadable')).toEqual([]);
  });
});
