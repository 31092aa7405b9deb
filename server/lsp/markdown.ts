/** Lays a card out as Markdown in which nothing from a file is markup: every sign of Markdown and HTML is escaped. */
import type { Card, CardLine } from '../../language/index.ts';

/** Longer hovers are cut, with a word. */
const mostLines = 60;

export function cardMarkdown({ title, lines }: Card): string {
  const shown = lines.slice(0, mostLines);
  const left = lines.length - shown.length;
  return [`**${escaped(title)}**`, ...shown.map(lineMarkdown), ...(left > 0 ? [`\n${left} more lines.`] : [])].join(
    '\n',
  );
}

function lineMarkdown({ kind, text }: CardLine): string {
  const words = escaped(text);
  switch (kind) {
    case 'text':
      return `\n${words}\n`;
    case 'fact':
      return `- ${words}`;
    case 'figure':
      return `- **${words}**`;
    case 'detail':
      return `  - ${words}`;
    case 'finding':
      return `- ⚠ ${words}`;
    case 'record':
      return `- ${words}`;
  }
}

/** Also keeps a text on its line, since a line break could begin a new element; addresses do not become links. */
export function escaped(text: string): string {
  return text
    .replace(/\s+/g, ' ')
    .trim()
    .replace(/[\\`*_{}[\]()|~$!]/g, '\\$&')
    .replace(/[<>&"]/g, (sign) => entities[sign] ?? sign)
    .replace(/:(?=\/)|@|(?<=www)\./gi, '\\$&')
    .replace(/^(\d+)(?=[.)]\s)|^(?=[-+#=])/, '$1\\');
}

const entities: Readonly<Record<string, string>> = { '<': '&lt;', '>': '&gt;', '&': '&amp;', '"': '&quot;' };
