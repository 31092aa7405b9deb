/** Sheet → one self-contained page that reads on a screen and prints on A4 and Letter. */
import type { Block, Item, Row, Sheet, Tick } from '../sheet.ts';
import { pageStyle } from './page-style.ts';

/** A complete page: no script, nothing fetched, all text of the file escaped. */
export function sheetAsHtml(sheet: Sheet): string {
  return `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta http-equiv="Content-Security-Policy" content="default-src 'none'; style-src 'unsafe-inline'">
<title>${escaped(`${sheet.title} – ${sheet.subtitle}`)}</title>
<style>${pageStyle}</style>
</head>
<body>
${sheetBody(sheet)}
</body>
</html>
`;
}

/** The sheet without the page around it, for a book of several. */
export function sheetBody(sheet: Sheet): string {
  const cautions = sheet.cautions.map((caution) => `<li>${escaped(caution)}</li>`).join('');
  return `<main class="sheet sheet-${escaped(sheet.id)}">
<header><h1>${escaped(sheet.title)}</h1><p class="subtitle">${escaped(sheet.subtitle)}</p></header>
${cautions === '' ? '' : `<ul class="cautions" aria-label="Cautions">${cautions}</ul>\n`}${sheet.blocks.map((block) => htmlOf(block, 2)).join('\n')}
</main>`;
}

function htmlOf(block: Block, level: number): string {
  switch (block.kind) {
    case 'section': {
      const heading = `h${Math.min(level, 6)}`;
      const inside = block.blocks.map((each) => htmlOf(each, level + 1)).join('\n');
      return `<section><${heading}>${box(block.tick)}${escaped(block.title)}</${heading}>\n${inside}\n</section>`;
    }
    case 'paragraph':
      return `<p>${escaped(block.text)}</p>`;
    case 'table':
      return tableOf(block.columns, block.rows);
    case 'list':
      return `<ul${block.items.some(({ tick }) => tick) ? ' class="ticks"' : ''}>${block.items.map(itemOf).join('')}</ul>`;
    case 'steps':
      return `<ol>${block.items.map(itemOf).join('')}</ol>`;
    case 'facts':
      return `<dl>${block.rows.map(([name, value]) => `<div><dt>${escaped(name)}</dt><dd>${escaped(value)}</dd></div>`).join('')}</dl>`;
    case 'drawing':
      return `<figure role="img" aria-label="${escaped(block.alternative)}">${block.svg}</figure>`;
  }
}

function itemOf(item: Item): string {
  const details = (item.details ?? []).map((detail) => `<span class="detail">${escaped(detail)}</span>`).join('');
  return `<li>${box(item.tick)}<span>${escaped(item.text)}</span>${details}</li>`;
}

function tableOf(columns: Extract<Block, { kind: 'table' }>['columns'], rows: readonly Row[]): string {
  const ticked = rows.some((row) => row.tick !== undefined);
  const side = (index: number): string => (columns[index]?.align === 'right' ? ' class="right"' : '');
  const head = columns.map(({ title }, index) => `<th scope="col"${side(index)}>${escaped(title)}</th>`).join('');
  const body = rows.map((row) => {
    const cells = columns.map((_, index) => `<td${side(index)}>${escaped(row.cells[index] ?? '')}</td>`).join('');
    return `<tr>${ticked ? `<td class="tick">${box(row.tick)}</td>` : ''}${cells}</tr>`;
  });
  const corner = ticked ? '<th scope="col"><span class="hidden">done</span></th>' : '';
  return `<table><thead><tr>${corner}${head}</tr></thead><tbody>${body.join('')}</tbody></table>`;
}

function box(tick: Tick | undefined): string {
  if (tick === undefined) return '';
  return tick === 'done'
    ? '<span class="box" role="img" aria-label="done">✓</span>'
    : '<span class="box" role="img" aria-label="to do"></span>';
}

const entities: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
  "'": '&#39;',
};

function escaped(text: string): string {
  return text.replace(/[&<>"']/g, (mark) => entities[mark] ?? mark);
}
