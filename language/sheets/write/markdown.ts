/** Sheet → Markdown that reads well as text and on a forge; task boxes where something is to be ticked. */
import type { Block, Item, Row, Sheet, Tick } from '../sheet.ts';

/** The sheet as Markdown; drawings become their words, since Markdown shows no markup of ours. */
export function sheetAsMarkdown(sheet: Sheet): string {
  const cautions = sheet.cautions.map((caution) => `> ${plain(caution)}`);
  const parts = [
    `# ${plain(sheet.title)}`,
    plain(sheet.subtitle),
    cautions.join('\n>\n'),
    ...sheet.blocks.map((block) => markdownOf(block, 2)),
  ];
  return `${parts.filter((part) => part !== '').join('\n\n')}\n`;
}

const boxes: Readonly<Record<Tick, string>> = { open: '[ ] ', done: '[x] ' };

function markdownOf(block: Block, level: number): string {
  switch (block.kind) {
    case 'section': {
      const mark = block.tick === undefined ? '' : block.tick === 'done' ? '☑ ' : '☐ ';
      const inside = block.blocks.map((each) => markdownOf(each, level + 1));
      return [`${'#'.repeat(Math.min(level, 6))} ${mark}${plain(block.title)}`, ...inside].join('\n\n');
    }
    case 'paragraph':
      return plain(block.text);
    case 'table':
      return tableOf(block.columns, block.rows);
    case 'list':
      return block.items.map((item) => itemOf(item, '- ')).join('\n');
    case 'steps':
      return block.items.map((item, index) => itemOf(item, `${index + 1}. `)).join('\n');
    case 'facts':
      return tableOf(
        [
          { title: '', align: 'left' },
          { title: '', align: 'left' },
        ],
        block.rows.map((cells) => ({ cells })),
      );
    case 'drawing':
      return `*${plain(block.alternative)}*`;
  }
}

function itemOf(item: Item, lead: string): string {
  const box = item.tick === undefined ? '' : boxes[item.tick];
  const indent = ' '.repeat(lead.length);
  return [
    `${lead}${box}${plain(item.text)}`,
    ...(item.details ?? []).map((detail) => `${indent}- ${plain(detail)}`),
  ].join('\n');
}

function tableOf(columns: Extract<Block, { kind: 'table' }>['columns'], rows: readonly Row[]): string {
  const ticked = rows.some((row) => row.tick !== undefined);
  const line = (cells: readonly string[]): string => `| ${cells.join(' | ')} |`;
  const titles = columns.map(({ title }) => plain(title));
  const rules = columns.map(({ align }) => (align === 'right' ? '---:' : '---'));
  const body = rows.map((row) => {
    const mark = row.tick === undefined ? '' : row.tick === 'done' ? '☑' : '☐';
    const cells = columns.map((_, index) => plain(row.cells[index] ?? ''));
    return line(ticked ? [mark, ...cells] : cells);
  });
  return [line(ticked ? ['', ...titles] : titles), line(ticked ? ['---', ...rules] : rules), ...body].join('\n');
}

/** Text of a file stays text: nothing in it becomes markup, a link or a tag. */
function plain(text: string): string {
  return text.replace(/[\\`*_[\]<>#|~&]/g, (mark) => `\\${mark}`).replace(/\r?\n/g, ' ');
}
