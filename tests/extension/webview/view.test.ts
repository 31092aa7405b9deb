/** The arithmetic of looking at a picture. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { View } from '../../../extension/preview/state.ts';
import {
  type Box,
  broughtIntoSight,
  centred,
  fitIn,
  panned,
  type Size,
  scaleLimits,
  transformOf,
  viewOf,
  zoomed,
} from '../../../extension/webview/view.ts';

const length = fc.double({ min: 40, max: 4000, noNaN: true });
const place = fc.double({ min: -2000, max: 2000, noNaN: true });
const panels: fc.Arbitrary<Size> = fc.record({ width: length, height: length });
const boxes: fc.Arbitrary<Box> = fc.record({ x: place, y: place, width: length, height: length });
const views: fc.Arbitrary<View> = fc.record({
  scale: fc.double({ min: 0.2, max: 4, noNaN: true }),
  x: place,
  y: place,
});

const shown = (view: View, panel: Size, box: Box): Box => {
  const { scale, x, y } = transformOf(view, panel);
  return { x: scale * box.x + x, y: scale * box.y + y, width: scale * box.width, height: scale * box.height };
};

describe('fitting', () => {
  test('shows the whole picture, in the middle, unless that would make it too small to be one', () => {
    fc.assert(
      fc.property(boxes, panels, (picture, panel) => {
        const view = fitIn(picture, panel);
        const seen = shown(view, panel, picture);
        expect(seen.x + seen.width / 2).toBeCloseTo(panel.width / 2, 6);
        expect(seen.y + seen.height / 2).toBeCloseTo(panel.height / 2, 6);
        if (view.scale > scaleLimits.least) {
          expect(seen.width).toBeLessThanOrEqual(panel.width);
          expect(seen.height).toBeLessThanOrEqual(panel.height);
        }
      }),
    );
  });

  test('a small picture is not blown up', () => {
    expect(fitIn({ x: 0, y: 0, width: 10, height: 10 }, { width: 1000, height: 1000 }).scale).toBe(1.5);
  });
});

describe('zooming and panning', () => {
  test('a view and its transform are the same thing said twice', () => {
    fc.assert(
      fc.property(views, panels, (view, panel) => {
        const back = viewOf(transformOf(view, panel), panel);
        expect(back.scale).toBe(view.scale);
        expect(back.x).toBeCloseTo(view.x, 6);
        expect(back.y).toBeCloseTo(view.y, 6);
      }),
    );
  });

  test('what is in the middle stays there, however far one zooms and whatever becomes of the panel', () => {
    fc.assert(
      fc.property(views, panels, fc.constantFrom(1.25, 0.8), (view, panel, factor) => {
        const { scale, x } = transformOf(zoomed(view, factor), panel);
        expect(scale * view.x + x).toBeCloseTo(panel.width / 2, 6);
      }),
    );
  });

  test('a pan moves everything by as many pixels as were asked for', () => {
    fc.assert(
      fc.property(views, panels, place, (view, panel, by) => {
        const [before, after] = [transformOf(view, panel), transformOf(panned(view, { x: by, y: -by }), panel)];
        expect(after.x - before.x).toBeCloseTo(by, 4);
        expect(after.y - before.y).toBeCloseTo(-by, 4);
      }),
    );
  });

  test('the scale keeps to its limits', () => {
    expect(zoomed({ scale: 7.9, x: 0, y: 0 }, 1.25).scale).toBe(scaleLimits.most);
    expect(zoomed({ scale: 0.11, x: 0, y: 0 }, 0.8).scale).toBe(scaleLimits.least);
    expect(centred({ x: 2, y: 0, width: 10, height: 10 }, 1)).toEqual({ scale: 1, x: 7, y: 5 });
  });
});

describe('bringing a part into sight', () => {
  const panel = { width: 400, height: 300 };

  test('a part that is in sight moves nothing', () => {
    const view = { scale: 1, x: 5, y: 6 };
    expect(broughtIntoSight(view, { x: 50, y: 50, width: 40, height: 40 }, panel)).toEqual(view);
  });

  test('a part that is not moves no farther than it must', () => {
    expect(broughtIntoSight({ scale: 1, x: 0, y: 0 }, { x: 390, y: 50, width: 40, height: 40 }, panel)).toEqual({
      scale: 1,
      x: 46,
      y: 0,
    });
    expect(broughtIntoSight({ scale: 1, x: 0, y: 0 }, { x: -30, y: 50, width: 40, height: 40 }, panel)).toEqual({
      scale: 1,
      x: -46,
      y: 0,
    });
  });

  test('a line longer than the panel is left alone while part of it shows', () => {
    const view = { scale: 1, x: 0, y: 0 };
    expect(broughtIntoSight(view, { x: -100, y: 50, width: 900, height: 4 }, panel)).toEqual(view);
    expect(broughtIntoSight(view, { x: 500, y: 50, width: 900, height: 4 }, panel).x).toBe(750);
  });

  test('afterwards it is in sight', () => {
    fc.assert(
      fc.property(fc.record({ x: place, y: place, width: fc.constant(30), height: fc.constant(30) }), (part) => {
        const by = broughtIntoSight({ scale: 1, x: 0, y: 0 }, part, panel);
        expect(part.x - by.x).toBeGreaterThanOrEqual(0);
        expect(part.x + part.width - by.x).toBeLessThanOrEqual(panel.width);
        expect(part.y - by.y).toBeGreaterThanOrEqual(0);
        expect(part.y + part.height - by.y).toBeLessThanOrEqual(panel.height);
      }),
    );
  });
});
