/** Against the figures of public service manuals as gathered in the trade notes (15, 13, 16, 19 and 21 N·m for small nuts). */
import { expect, it } from 'vitest';
import { torqueRange, torquesSeen, tubeNutTorque } from '../../language/standards/torque.ts';
import { inch, mm } from '../../language/standards/written-units.ts';

it('nuts on 3/16 in and 4.75 mm tube are seen at 13 to 21 N·m', () => {
  for (const tube of [inch(3 / 16), mm(4.75)]) {
    expect(tubeNutTorque(tube)).toMatchObject({ low: 13, high: 21 });
  }
});

it('for other tube nothing was seen, so nothing is said', () => {
  for (const tube of [inch(1 / 4), mm(6), mm(8), mm(0)]) expect(tubeNutTorque(tube)).toBeUndefined();
});

it('bleed screws take far less than bolts', () => {
  expect(torqueRange('bleed-screw')).toMatchObject({ low: 7, high: 9.8 });
  expect(torqueRange('banjo-bolt')).toMatchObject({ low: 27, high: 34 });
});

it('each figure names where it was seen', () => {
  for (const { low, high, source } of torquesSeen) {
    expect(low).toBeLessThanOrEqual(high);
    expect(source).toMatchObject({ kind: 'published', text: expect.stringMatching(/manual/) });
  }
});
