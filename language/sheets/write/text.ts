/** Sheet → plain text for a terminal or a till printer. */
import type { Block, Column, Item, Row, Sheet, Tick } from '../sheet.ts';

/** The sheet as text; lines of prose are not broken, tables are padded to line up. */
export function sheetAsText(sheet: Sheet): string {
  const head = [sheet.title, '='.repeat(widthOf(sheet.title)), sheet.subtitle, ''];
  const cautions = sheet.cautions.map((caution) => `! ${caution}`);
  const body = sheet.blocks.flatMap((block) => ['', ...linesOf(block, 0)]);
  return `${[...head, ...cautions, ...body]
    .join('\n')
    .replace(/\n{3,}/g, '\n\n')
    .trimEnd()}\n`;
}

const boxes: Readonly<Record<Tick, string>> = { open: '[ ]', done: '[x]' };
const box = (tick: Tick | undefined): string => (tick === undefined ? '' : `${boxes[tick]} `);

function linesOf(block: Block, depth: number): readonly string[] {
  switch (block.kind) {
    case 'section': {
      const title = `${box(block.tick)}${block.title}`;
      const rule = (depth === 0 ? '-' : '.').repeat(widthOf(title));
      return [
        title,
        rule,
        ...block.blocks.flatMap((inside, index) => [...(index > 0 ? [''] : []), ...linesOf(inside, depth + 1)]),
      ];
    }
    case 'paragraph':
      return [block.text];
    case 'table':
      return tableLines(block.columns, block.rows);
    case 'list':
      return block.items.flatMap((item) => itemLines(item, item.tick === undefined ? '- ' : box(item.tick)));
    case 'steps':
      return block.items.flatMap((item, index) => itemLines(item, `${index + 1}. ${box(item.tick)}`));
    case 'facts': {
      const width = Math.max(0, ...block.rows.map(([name]) => widthOf(name)));
      return block.rows.map(([name, value]) => `${padded(name, width, 'left')}  ${value}`);
    }
    case 'drawing':
      return [`(${block.alternative})`];
  }
}

function itemLines(item: Item, lead: string): readonly string[] {
  const indent = ' '.repeat(widthOf(lead));
  return [`${lead}${item.text}`, ...(item.details ?? []).map((detail) => `${indent}${detail}`)];
}

function tableLines(columns: readonly Column[], rows: readonly Row[]): readonly string[] {
  const ticked = rows.some((row) => row.tick !== undefined);
  const widths = columns.map((column, index) =>
    Math.max(widthOf(column.title), ...rows.map((row) => widthOf(row.cells[index] ?? ''))),
  );
  const line = (lead: string, cells: readonly string[]): string => {
    const texts = columns.map((column, index) => padded(cells[index] ?? '', widths[index] ?? 0, column.align));
    return `${ticked ? lead : ''}${texts.join('  ')}`.trimEnd();
  };
  return [
    line(
      '    ',
      columns.map(({ title }) => title),
    ),
    line(
      '    ',
      widths.map((width) => '-'.repeat(width)),
    ),
    ...rows.map((row) => line(`${row.tick === undefined ? '   ' : boxes[row.tick]} `, row.cells)),
  ];
}

function padded(text: string, width: number, align: Column['align']): string {
  const space = ' '.repeat(Math.max(0, width - widthOf(text)));
  return align === 'left' ? text + space : space + text;
}

function widthOf(text: string): number {
  return [...text].length;
}
