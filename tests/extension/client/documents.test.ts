/** Which documents are worked on, and which files are text. */
import { expect, test } from 'vitest';
import { decodeText, largestFile } from '../../../extension/client/decode-text.ts';
import { documentSelector, isServed } from '../../../extension/client/documents.ts';

const document = (scheme: string, languageId = 'linewright') => ({ languageId, uri: { scheme } });

test('files, untitled and virtual documents are worked on; the old side of a diff is not', () => {
  for (const scheme of ['file', 'untitled', 'vscode-vfs', 'vscode-remote'])
    expect(isServed(document(scheme))).toBe(true);
  expect(isServed(document('git'))).toBe(false);
  expect(isServed(document('file', 'markdown'))).toBe(false);
  expect(documentSelector.map(({ scheme }) => scheme)).not.toContain('git');
});

test('UTF-8 is read with its marks', () => {
  expect(decodeText(new TextEncoder().encode('5 µm 🔧'))).toEqual({ kind: 'text', text: '5 µm 🔧' });
});

test.each([
  ['a program', new Uint8Array([0x7f, 0x45, 0x4c, 0x46, 0])],
  ['another encoding', new Uint8Array([0x62, 0xfc, 0x63])],
  ['far too much', new Uint8Array(largestFile + 1).fill(0x20)],
])('%s is refused with a reason', (_, bytes) => {
  const content = decodeText(bytes);
  expect(content.kind).toBe('unreadable');
  expect(content).toHaveProperty('reason', expect.stringMatching(/^The file .*\.$/));
});
