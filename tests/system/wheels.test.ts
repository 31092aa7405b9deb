import { describe, expect, it } from 'vitest';
import { allParts } from '../../language/system/system.ts';
import { wheelOf, wheelWords } from '../../language/system/wheels.ts';
import { readCircuit } from '../support/read.ts';

const wheelOfFirst = (text: string): unknown => allParts(readCircuit(text).planned).map(wheelOf)[0];

describe('The wheel of a brake', () => {
  it.each([
    ['drum-brake rear-left {}', { axle: 'rear', side: 'left' }],
    ['drum-brake FL {}', { axle: 'front', side: 'left' }],
    ['drum-brake rh-front {}', { axle: 'front', side: 'right' }],
    ['drum-brake lr {}', { axle: 'rear', side: 'left' }],
    ['drum-brake b { wheel rear-right }', { axle: 'rear', side: 'right' }],
    ['drum-brake front { wheel front }', { axle: 'front', side: 'centre' }],
    ['drum-brake left { wheel rear }', { axle: 'rear', side: 'left' }],
    ['drum-brake nearside-front {}', { axle: 'front', side: undefined }],
    ['drum-brake brake-one {}', { axle: undefined, side: undefined }],
    ['drum-brake front-or-rear {}', { axle: undefined, side: undefined }],
  ])('%s', (text, wheel) => {
    expect(wheelOfFirst(text)).toEqual(wheel);
  });

  it('is told by the place where the name says only the side', () => {
    expect(wheelOfFirst('drum-brake left on rear-axle {}\nvehicle v { sprung rear-axle }')).toEqual({
      axle: 'rear',
      side: 'left',
    });
  });

  it('is called what a mechanic calls it', () => {
    expect(wheelWords({ axle: 'rear', side: 'left' })).toBe('rear left');
    expect(wheelWords({ axle: 'front', side: 'centre' })).toBe('front');
    expect(wheelWords({ axle: undefined, side: undefined })).toBeUndefined();
  });
});
