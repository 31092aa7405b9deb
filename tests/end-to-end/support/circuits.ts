/** The circuits that the tests open: the one of the walkthrough, and the same with a fault. */
import { readFileSync } from 'node:fs';
import path from 'node:path';

export const smallCar = readFileSync(
  path.resolve(import.meta.dirname, '../../../extension/walkthrough/first.circuit'),
  'utf8',
);

/** A metric nut on a line whose ports have inch threads. */
export const withWrongNut = smallCar.replace(
  'run main-to-front-tee of line {\n',
  'run main-to-front-tee of line {\n  nut M10x1\n',
);

/** The same car with what it repeats in a file of its own. */
export function splitInTwo(): Readonly<Record<string, string>> {
  const stock = smallCar.match(/^stock [^{]*\{[^}]*\}\n/gm) ?? [];
  const car = stock.reduce((text, declaration) => text.replace(declaration, ''), smallCar);
  return { 'car.circuit': `use "stock.circuit"\n\n${car}`, 'stock.circuit': stock.join('\n') };
}
