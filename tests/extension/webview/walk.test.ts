/** Keys, and walking along the lines with them. */
import { describe, expect, test } from 'vitest';
import { actionOf } from '../../../extension/webview/keys.ts';
import { neighbourTowards } from '../../../extension/webview/walk.ts';

const plain = { ctrlKey: false, metaKey: false, altKey: false };
const tee = { x: 100, y: 100 };
const neighbours = [
  { id: 'left-wheel', at: { x: 20, y: 130 } },
  { id: 'right-wheel', at: { x: 180, y: 130 } },
  { id: 'master', at: { x: 100, y: 10 } },
];

describe('walking', () => {
  test.each([
    ['left', 'left-wheel'],
    ['right', 'right-wheel'],
    ['up', 'master'],
  ] as const)('%s leads to %s', (direction, id) => {
    expect(neighbourTowards(tee, direction, neighbours)?.id).toBe(id);
  });

  test('where nothing lies nobody goes', () => {
    expect(neighbourTowards(tee, 'down', [neighbours[2] ?? { id: '', at: tee }])).toBeUndefined();
    expect(neighbourTowards(tee, 'left', [{ id: 'itself', at: tee }])).toBeUndefined();
    expect(neighbourTowards(tee, 'left', [])).toBeUndefined();
  });
});

describe('keys', () => {
  test('have their meaning alone, and belong to the editor with a modifier', () => {
    expect(actionOf({ key: '+', ...plain })).toEqual({ kind: 'zoomIn' });
    expect(actionOf({ key: 'f', ...plain })).toEqual({ kind: 'fit' });
    expect(actionOf({ key: 'ArrowLeft', ...plain })).toEqual({ kind: 'move', direction: 'left' });
    expect(actionOf({ key: '0', ...plain, ctrlKey: true })).toBeUndefined();
    expect(actionOf({ key: 'f', ...plain, metaKey: true })).toBeUndefined();
    expect(actionOf({ key: 'q', ...plain })).toBeUndefined();
  });
});
