import { describe, expect, it } from 'vitest';
import { motionBetween } from '../../language/system/places.ts';
import { readCircuit } from '../support/read.ts';

const places =
  readCircuit(`vehicle v {
  fixed frame
  fixed cab on frame
  rubber-mounted engine on frame
  sprung front-axle on frame travel 120 mm
  sprung rear-axle on frame travel 160 mm
  fixed hub on rear-axle
}`).planned.vehicle?.places ?? [];

const motion = (a: string, b: string) => motionBetween(places, a, b)?.motion;

describe('Two places of a vehicle', () => {
  it('stand still when they are fixed to the same thing', () => {
    expect(motion('frame', 'cab')).toBe('fixed');
    expect(motion('frame', 'frame')).toBe('fixed');
    expect(motion('hub', 'rear-axle')).toBe('fixed');
  });

  it('move as the freest link between them', () => {
    expect(motion('cab', 'engine')).toBe('rubber-mounted');
    expect(motion('engine', 'rear-axle')).toBe('sprung');
    expect(motion('hub', 'cab')).toBe('sprung');
  });

  it('say which places move', () => {
    expect(motionBetween(places, 'front-axle', 'hub')?.moving.map(({ name }) => name)).toEqual([
      'front-axle',
      'rear-axle',
    ]);
  });

  it('move alike whichever is named first', () => {
    for (const a of places) for (const b of places) expect(motion(a.name, b.name)).toBe(motion(b.name, a.name));
  });

  it('are not guessed at when one of them is not declared', () => {
    expect(motion('frame', 'boot')).toBeUndefined();
  });

  it('that carry each other in a circle end the walk', () => {
    const circle = readCircuit('vehicle v { sprung a on b  rubber-mounted b on a }').planned.vehicle?.places ?? [];
    expect(motionBetween(circle, 'a', 'b')?.motion).toBe('fixed');
  });
});
