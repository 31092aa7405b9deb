import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { left, right, type Sheet } from '../../language/sheets/sheet.ts';
import { sheetFormats, writeSheet } from '../../language/sheets/write/index.ts';

const hostile = '<script>alert("1")</script> `code` [link](command:x) | é 🛠';

const sheet = (text: string): Sheet => ({
  id: 'lines',
  title: 'Lines to make',
  subtitle: text,
  cautions: ['Brakes can kill. The maker’s manual comes first.'],
  blocks: [
    {
      kind: 'section',
      title: text,
      tick: 'open',
      blocks: [
        {
          kind: 'facts',
          rows: [
            ['cut to', '52 1/32 in'],
            ['tube', text],
          ],
        },
        {
          kind: 'table',
          columns: [right('length'), left('what')],
          rows: [
            { tick: 'open', cells: ['3 in', text] },
            { tick: 'done', cells: ['14 1/4 in', 'bend'] },
          ],
        },
        {
          kind: 'steps',
          items: [
            { text: 'Cut.', details: [text] },
            { text: 'Flare.', tick: 'open' },
          ],
        },
        {
          kind: 'drawing',
          alternative: 'The tube laid out straight.',
          svg: '<svg xmlns="http://www.w3.org/2000/svg"></svg>',
        },
      ],
    },
    { kind: 'list', items: [{ tick: 'done', text: 'bought' }] },
  ],
  data: { lines: [{ name: text, cutLengthMetres: 1.3216 }] },
  list: {
    columns: ['part', 'count'],
    rows: [
      [text, '2'],
      ['=1+1', '-4 mm'],
    ],
  },
});

describe('a sheet', () => {
  it('as text lines its columns up and shows what is done', () => {
    expect(writeSheet(sheet('Orchard van'), 'text')).toBe(`Lines to make
=============
Orchard van

! Brakes can kill. The maker’s manual comes first.

[ ] Orchard van
---------------
cut to  52 1/32 in
tube    Orchard van

       length  what
    ---------  -----------
[ ]      3 in  Orchard van
[x] 14 1/4 in  bend

1. Cut.
   Orchard van
2. [ ] Flare.

(The tube laid out straight.)

[x] bought
`);
  });

  it('as a page holds the text of the file as text', () => {
    const html = writeSheet(sheet(hostile), 'html') ?? '';
    expect(html).not.toMatch(/<script/);
    expect(html).toContain('&lt;script&gt;');
    expect(html).not.toMatch(/(?:src|href)=|url\(|@import/);
  });

  it('as Markdown keeps marks of the file from becoming markup', () => {
    const markdown = writeSheet(sheet(hostile), 'markdown') ?? '';
    expect(markdown).not.toMatch(/(?<!\\)<script/);
    expect(markdown).not.toMatch(/(?<!\\)\[link(?<!\\)\]\(command/);
    expect(markdown).not.toMatch(/(?<!\\)`code/);
  });

  it('as CSV quotes what needs it and disarms formulas', () => {
    expect(writeSheet(sheet('a "b", c'), 'csv')).toBe('part,count\r\n"a ""b"", c",2\r\n\'=1+1,-4 mm\r\n');
  });

  it('that is no list has no CSV', () => {
    const { list, ...none } = sheet('x');
    expect(list).toBeDefined();
    expect(writeSheet(none, 'csv')).toBeUndefined();
  });

  it('as JSON gives its data and the version of its shape', () => {
    expect(JSON.parse(writeSheet(sheet('x'), 'json') ?? '')).toMatchObject({
      schema: 'linewright/sheet/1',
      sheet: 'lines',
      data: { lines: [{ name: 'x', cutLengthMetres: 1.3216 }] },
    });
  });

  it('with any text in it can be written in every format', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'grapheme' }), fc.constantFrom(...sheetFormats), (text, format) => {
        const written = writeSheet(sheet(text), format);
        expect(written).toBeTypeOf('string');
        if (format === 'html') expect((written ?? '').split('<script').length).toBe(1);
        if (format === 'csv') expect((written ?? '').split('\r\n').length).toBeGreaterThanOrEqual(4);
      }),
    );
  });
});
