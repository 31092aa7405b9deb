/** The tube laid out straight: to scale, well formed, readable, and told in words too. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Developed, developedDrawing } from '../../language/sheets/developed-drawing.ts';
import { type Element, readXml } from '../schematic/xml.ts';

const tube: Developed = {
  name: 'rear-line',
  length: 2,
  lengthText: '2000 mm',
  bends: [
    { number: 1, start: 0.5, end: 0.6, angle: '90°', mark: '500 mm' },
    { number: 2, start: 1.5, end: 1.6, angle: '45°', mark: '1500 mm' },
  ],
};

const all = (element: Element): readonly Element[] => [element, ...element.children.flatMap(all)];
const drawn = (developed: Developed): readonly Element[] => all(readXml(developedDrawing(developed).svg));
const number = (element: Element | undefined, name: string): number =>
  Number(element?.attributes.get(name) ?? Number.NaN);
const ofClass = (elements: readonly Element[], name: string) =>
  elements.filter(({ attributes }) => attributes.get('class') === name);

describe('the developed drawing', () => {
  it('is to scale along the tube', () => {
    const elements = drawn(tube);
    const [body] = ofClass(elements, 'tube');
    const [x, width] = [number(body, 'x'), number(body, 'width')];
    const marks = ofClass(elements, 'mark').map((mark) => (number(mark, 'x1') - x) / width);
    for (const [index, along] of [0.25, 0.3, 0.75, 0.8].entries()) expect(marks[index]).toBeCloseTo(along, 4);
  });

  it('says in words what it shows', () => {
    expect(developedDrawing(tube).alternative).toBe(
      'rear-line laid out straight, 2000 mm from flare face to flare face; from end A, bend 1 of 90° begins at 500 mm, bend 2 of 45° begins at 1500 mm.',
    );
  });

  it('shows under a strict content policy: no style, no script, nothing fetched', () => {
    for (const { name, attributes } of drawn(tube)) {
      expect(['style', 'script', 'image', 'use']).not.toContain(name);
      expect([...attributes.keys()].filter((key) => key === 'style' || key.startsWith('on') || key === 'href')).toEqual(
        [],
      );
    }
  });

  it('keeps words of the file words', () => {
    const svg = developedDrawing({ ...tube, lengthText: '<b>"&', name: '<script>' }).svg;
    expect(readXml(svg)).toBeDefined();
    expect(svg).toContain('&lt;b&gt;');
  });

  it('keeps its labels apart and its marks inside, however close the bends', () => {
    const bends = fc.array(fc.double({ min: 0, max: 1, noNaN: true }), { minLength: 1, maxLength: 12 });
    fc.assert(
      fc.property(bends, (starts) => {
        const sorted = [...starts].sort((a, b) => a - b);
        const elements = drawn({
          ...tube,
          length: 1,
          bends: sorted.map((start, index) => ({
            number: index + 1,
            start,
            end: Math.min(1, start + 0.02),
            angle: '90°',
            mark: `${Math.round(start * 1000)} mm`,
          })),
        });
        const [, , boxWidth = 0, boxHeight = 0] = (
          elements.find(({ name }) => name === 'svg')?.attributes.get('viewBox') ?? ''
        )
          .split(' ')
          .map(Number);
        const labels = ofClass(elements, 'measure').map((label) => {
          const width = label.text.length * 11 * 0.556;
          const left = number(label, 'x') - (label.attributes.get('text-anchor') === 'middle' ? width / 2 : 0);
          return { left, right: left + width, y: number(label, 'y') };
        });
        const leaders = ofClass(elements, 'leader').map((leader) => ({
          x: number(leader, 'x1'),
          top: Math.min(number(leader, 'y1'), number(leader, 'y2')),
          bottom: Math.max(number(leader, 'y1'), number(leader, 'y2')),
        }));
        for (const [index, one] of labels.entries()) {
          expect(one.left).toBeGreaterThanOrEqual(0);
          expect(one.right).toBeLessThanOrEqual(boxWidth);
          expect(one.y).toBeGreaterThanOrEqual(8);
          expect(one.y).toBeLessThanOrEqual(boxHeight);
          for (const other of labels.slice(index + 1)) {
            const apart = Math.abs(one.y - other.y) >= 11 || one.right <= other.left || other.right <= one.left;
            expect(apart).toBe(true);
          }
          const crossing = leaders.filter(
            ({ x, top, bottom }) => x > one.left && x < one.right && top < one.y - 2 && bottom > one.y - 6,
          );
          expect(crossing).toEqual([]);
        }
      }),
    );
  });
});
