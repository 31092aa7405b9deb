import { expect, it } from 'vitest';
import { frontMatters, nutFronts, nutReach } from '../../language/standards/nut-forms.ts';

it('the front of a metric nut goes by the flare; inch nuts come one way', () => {
  expect(frontMatters('bubble', 'M10x1')).toBe(true);
  expect(frontMatters('double-45', 'M12x1')).toBe(true);
  expect(frontMatters('double-45', '3/8-24')).toBe(false);
  expect(frontMatters('single-37', 'M10x1')).toBe(false);
  expect(frontMatters('bubble', undefined)).toBe(false);
});

it('what is said of nuts names where it comes from', () => {
  expect([nutFronts.source.kind, nutReach.source.kind]).toEqual(['published', 'common-practice']);
});
