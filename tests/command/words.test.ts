import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { TextDocument } from 'vscode-languageserver-textdocument';
import { spotsIn } from '../../server/command/places.ts';
import { plain } from '../../server/command/plain.ts';
import { aligned, widthOf } from '../../server/command/table.ts';
import { painted, paintFor, unpainted } from '../../server/command/terminal.ts';
import { writeWhole } from '../../server/command/write-whole.ts';
import { garage } from './garage.ts';

const lines = fc.string({ unit: fc.constantFrom('a', 'µ', '🚗', ' ', '\n', '\r', '\r\n') });

describe('lines and columns', () => {
  it('are those of the language protocol, counted from one', () => {
    fc.assert(
      fc.property(lines, fc.nat(), (text, reach) => {
        const offset = text.length === 0 ? 0 : reach % (text.length + 1);
        // Inside a line end the protocol's own library steps back to before it; nothing ever points there.
        fc.pre(text.slice(offset - 1, offset + 1) !== '\r\n');
        const { line, character } = TextDocument.create('', '', 0, text).positionAt(offset);
        expect(spotsIn(text)(offset)).toEqual({ line: line + 1, column: character + 1 });
      }),
    );
  });

  it('stay inside the text', () => {
    expect(spotsIn('ab\ncd')(-3)).toEqual({ line: 1, column: 1 });
    expect(spotsIn('ab\ncd')(99)).toEqual({ line: 2, column: 3 });
    expect(spotsIn('')(0)).toEqual({ line: 1, column: 1 });
  });
});

describe('plain words', () => {
  it('hold nothing that steers a terminal, and say what was there', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary' }), (text) => {
        expect(plain(text)).not.toMatch(/[\p{Cc}\u202a-\u202e\u2066-\u2069\u2028\u2029]/u);
      }),
    );
    expect(plain('a\u001b[2Jb\u202e\n')).toBe('a<1b>[2Jb<202e><0a>');
  });

  it('are left alone where they do no harm', () => {
    const kind = '“5 µm” <script> 🚗 ½ né';
    expect(plain(kind)).toBe(kind);
  });
});

describe('columns of text', () => {
  it('begin under each other, however letters are made up', () => {
    const rows = [
      ['a', 'one'],
      ['ne\u0301', 'two'],
      ['long word', 'three'],
    ];
    const starts = aligned(rows, { indent: '  ', gap: ' | ' }).map((row) => widthOf(row.slice(0, row.indexOf('|'))));
    expect(new Set(starts).size).toBe(1);
  });

  it('leave no spaces at the ends of lines', () => {
    expect(
      aligned(
        [
          ['a', ''],
          ['bcd', 'e'],
        ],
        { indent: '', gap: '  ' },
      ),
    ).toEqual(['a', 'bcd  e']);
  });
});

describe('colour', () => {
  it('is for a terminal whose owner has not declined it', () => {
    expect(paintFor({ isTTY: true }, {})).toBe(painted);
    expect(paintFor({}, {})).toBe(unpainted);
    expect(paintFor({ isTTY: true }, { NO_COLOR: '1' })).toBe(unpainted);
    expect(paintFor({ isTTY: true }, { NO_COLOR: '' })).toBe(painted);
    expect(paintFor({ isTTY: true }, { TERM: 'dumb' })).toBe(unpainted);
  });
});

describe('writing whole', () => {
  const folder = garage({ 'kept/old.svg': 'old', 'new/a.svg': 'old' });

  it('leaves the old text where the new one cannot be written', async () => {
    expect(await writeWhole(join(folder, 'kept'), 'new')).toEqual({ kind: 'refused', reason: 'it is a folder' });
    const long = join(folder, `${'x'.repeat(300)}.svg`);
    expect(await writeWhole(long, 'new')).toEqual({ kind: 'refused', reason: 'the name is too long' });
    expect(existsSync(long)).toBe(false);
    expect(readFileSync(join(folder, 'kept', 'old.svg'), 'utf8')).toBe('old');
  });

  it('replaces text whole and leaves nothing beside it', async () => {
    const long = 'new'.repeat(100_000);
    for (const name of ['a.svg', 'b.svg']) {
      expect(await writeWhole(join(folder, 'new', name), long)).toEqual({ kind: 'written' });
    }
    expect(readFileSync(join(folder, 'new', 'a.svg'), 'utf8')).toBe(long);
    expect(readdirSync(join(folder, 'new')).sort()).toEqual(['a.svg', 'b.svg']);
  });
});
