/** SVG text: numbers in one form, every word from a file escaped, attributes in the order given. */

/** Characters that XML 1.0 does not allow at all, lone halves of surrogate pairs included. */
const forbidden =
  // biome-ignore lint/suspicious/noControlCharactersInRegex: these are the ones to take out
  /[\u0000-\u0008\u000b\u000c\u000e-\u001f\ufffe\uffff]|[\ud800-\udbff](?![\udc00-\udfff])|(?<![\ud800-\udbff])[\udc00-\udfff]/g;

const entities: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
  "'": '&#39;',
};

const escaped = (text: string): string =>
  text.replace(forbidden, '\ufffd').replace(/[&<>"']/g, (character) => entities[character] ?? '');

/** At most two decimals, never an exponent, never minus nought. */
export function digits(value: number): string {
  const rounded = Math.round(value * 100) / 100;
  return Object.is(rounded, -0) || !Number.isFinite(rounded) ? '0' : String(rounded);
}

export type Attributes = Readonly<Record<string, string | number | undefined>>;

function attributesText(attributes: Attributes): string {
  return Object.entries(attributes)
    .flatMap(([name, value]) =>
      value === undefined ? [] : [` ${name}="${typeof value === 'number' ? digits(value) : escaped(value)}"`],
    )
    .join('');
}

/** An element; `children` are markup already, words go through `escaped` or `words`. */
export function element(name: string, attributes: Attributes, children: readonly string[] = []): string {
  const open = `<${name}${attributesText(attributes)}`;
  return children.length === 0 ? `${open}/>` : `${open}>${children.join('')}</${name}>`;
}

export const words = (name: string, attributes: Attributes, text: string): string =>
  element(name, attributes, [escaped(text)]);
