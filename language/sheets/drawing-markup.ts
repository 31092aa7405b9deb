/** The little SVG that drawings on sheets are made of: numbers in one form, every word escaped. */

/** At most two decimals, never an exponent or minus nought. */
export function digits(value: number): string {
  const rounded = Math.round(value * 100) / 100;
  return Object.is(rounded, -0) || !Number.isFinite(rounded) ? '0' : String(rounded);
}

const entities: Readonly<Record<string, string>> = { '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;' };

const escaped = (text: string): string => text.replace(/[&<>"]/g, (mark) => entities[mark] ?? '');

export type Attributes = Readonly<Record<string, string | number>>;

/** An element; its children are markup already. */
export function element(name: string, attributes: Attributes, children: readonly string[] = []): string {
  const written = Object.entries(attributes).map(
    ([key, value]) => ` ${key}="${typeof value === 'number' ? digits(value) : escaped(value)}"`,
  );
  return `<${name}${written.join('')}>${children.join('')}</${name}>`;
}

export const words = (attributes: Attributes, text: string): string => element('text', attributes, [escaped(text)]);

/** Room for a text in a sans-serif type; figures are 0.556 em wide in Helvetica and Arial, so this is on the safe side. */
export const roomFor = (text: string, size: number): number => [...text].length * size * 0.6;
