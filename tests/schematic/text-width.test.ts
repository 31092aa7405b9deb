import { describe, expect, it } from 'vitest';
import { fitText, textWidth } from '../../language/schematic/text-width.ts';

const regular = { size: 1000, weight: 'regular' } as const;
const bold = { size: 1000, weight: 'bold' } as const;
const allowance = 1.08;

describe('text width', () => {
  // Advance widths from the `hmtx` table of Liberation Sans, which has the metrics of Helvetica and Arial: read from the font.
  it.each([
    ['Hello', 722 + 556 + 222 + 222 + 556],
    ['3/16 in', 556 + 278 + 556 + 556 + 278 + 222 + 556],
    ['W@j~', 944 + 1015 + 222 + 584],
  ])('of %s is the sum of its letters', (text, thousandths) => {
    expect(textWidth(text, regular)).toBeCloseTo(thousandths * allowance, 6);
  });

  it('is greater in bold', () => {
    expect(textWidth('front-left', bold)).toBeGreaterThan(textWidth('front-left', regular));
  });

  it('takes an emoji for more than a letter, a combining accent for nothing', () => {
    expect(textWidth('🔧', regular)).toBeGreaterThan(textWidth('M', regular));
    expect(textWidth('e\u0301', regular)).toBe(textWidth('e', regular));
  });
});

describe('fitting text', () => {
  it('leaves alone what fits', () => {
    expect(fitText('rear-tee', { size: 12, weight: 'bold' }, 100)).toBe('rear-tee');
  });

  it('cuts what does not, says so with an ellipsis, and then fits', () => {
    const font = { size: 12, weight: 'regular' } as const;
    const cut = fitText('a-very-long-name-for-a-run-of-tube', font, 100);
    expect(cut.endsWith('…')).toBe(true);
    expect(textWidth(cut, font)).toBeLessThanOrEqual(100);
  });

  it('never cuts an emoji in half', () => {
    expect(fitText('🔧🔧🔧🔧', { size: 12, weight: 'regular' }, 40)).toBe('🔧…');
  });
});
