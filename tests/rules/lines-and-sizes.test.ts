import { describe, expect, it } from 'vitest';
import { findingsOf } from '../support/findings.ts';

const seat = '3/8-24 inverted-flare';
const said = (code: string, text: string) => findingsOf(code, text).map(({ message }) => message);
const graded = (code: string, text: string) => findingsOf(code, text).map(({ severity }) => severity);

describe('Rigid tube', () => {
  const van = (tube: string) => `vehicle van {
  fixed frame
  sprung rear-axle on frame travel 160 mm
  sprung swing on frame
}
tee split on frame { ports in, left, right: ${seat} }
tee axle-tee on rear-axle { ports in, left, right: ${seat} }
tee swing-tee on swing { ports in, left, right: ${seat} }
${tube}
`;

  it('over springs names both places and how far they move', () => {
    const [finding] = findingsOf('rigid-over-sprung', van('run line { from split.left to axle-tee.in }'));
    expect(finding?.message).toBe(
      'line is rigid from split on frame to axle-tee on rear-axle, and rear-axle moves 160 mm on its springs. Rigid tube cracks there: put a brake hose between the two.',
    );
    expect(finding?.related).toHaveLength(2);
  });

  it('over springs is found where the run itself rides on one of the places', () => {
    expect(said('rigid-over-sprung', van('run line on frame { to axle-tee.in }'))).toHaveLength(1);
  });

  it('over springs of which the travel is not said is found all the same', () => {
    expect(said('rigid-over-sprung', van('run line { from split.left to swing-tee.in }'))[0]).toContain(
      'swing moves on its springs',
    );
  });

  it('that ends at a hose is not judged by where the hose is held', () => {
    const text = van(`run line { from axle-tee.left to jumper.to }
hose jumper on frame { from split.left: ${seat} male fixed  to: ${seat} female swivel }`);
    expect(said('rigid-over-sprung', text)).toEqual([]);
  });
});

describe('A hose', () => {
  const hose = (length: string, travel = '') => `vehicle van { fixed frame  sprung axle on frame ${travel} }
tee a on frame { port out: ${seat} at (0 in, 0 in, 16 in) }
tee b on axle { port in: ${seat} at (-12 in, 5 in, 16 in) }
hose jumper { length ${length}  from a.out: ${seat} male fixed  to b.in: ${seat} male swivel }
`;

  it('that does not reach is short by the difference (5, 12, 13: Euclid)', () => {
    expect(said('hose-too-short', hose('12 1/2 in'))).toEqual([
      'jumper is 12 1/2 in long and its ends are 13 in apart: it is 1/2 in too short. Fit a longer one, with slack at full bump, full droop and both steering locks.',
    ]);
  });

  it('that reaches at rest has to reach over half of the travel at the least', () => {
    // √(13² + 7²) = 14.76 in with 14 in of travel
    expect(said('hose-too-short', hose('14 in', 'travel 14 in'))[0]).toContain('get at least 14 3/4 in apart');
    expect(said('hose-too-short', hose('15 in', 'travel 14 in'))).toEqual([]);
  });

  it('between sprung places of unknown travel is judged at rest', () => {
    expect(said('hose-too-short', hose('13 in', 'travel ?'))).toEqual([]);
    expect(said('hose-too-short', hose('12 in', 'travel ?'))).toHaveLength(1);
  });
});

describe('A bend', () => {
  const bent = (route: string) => `run line { tube 3/16 in  route ${route} }\n`;

  it('is graded by the limit that it breaks, each with its source', () => {
    const bend = (radius: string) => bent(`straight 60 mm, bend 90 deg radius ${radius}, straight 60 mm`);
    expect(graded('bend-tight', bend('11 mm'))).toEqual(['warning']);
    expect(graded('bend-tight', bend('14 mm'))).toEqual(['warning']);
    expect(graded('bend-tight', bend('19 mm'))).toEqual(['information']);
    expect(graded('bend-tight', bend('24 mm'))).toEqual(['information']);
    expect(graded('bend-tight', bend('25 mm'))).toEqual([]);
    expect(said('bend-tight', bend('24 mm'))[0]).toContain('DIN 74234');
    expect(said('bend-tight', bend('11 mm'))[0]).toContain('workshop manual');
  });

  it('tells a writer of inches the least radius as a tape shows it, rounded up', () => {
    const bend = (radius: string) => bent(`straight 3 in, bend 90 deg radius ${radius}, straight 3 in`);
    expect(said('bend-tight', bend('1/2 in'))[0]).toMatch(/Make it at least 9\/16 in\.$/);
    expect(said('bend-tight', bend('5/8 in'))[0]).toMatch(/Make it at least 13\/16 in\.$/);
    expect(said('bend-tight', bent('straight 60 mm, bend 90 deg radius 13 mm, straight 60 mm'))[0]).toMatch(
      /Make it at least 14\.5 mm\.$/,
    );
  });

  it('is one finding for each run, at its tightest', () => {
    const text = bent(
      'straight 60 mm, bend 90 deg radius 22 mm, straight 60 mm, bend 90 deg radius 10 mm, straight 60 mm',
    );
    const [finding, ...more] = findingsOf('bend-tight', text);
    expect(more).toEqual([]);
    expect(finding?.message).toContain('radius of 10 mm');
    expect(finding?.message).toContain('So is 1 more bend.');
    expect(text.slice(finding?.origin.start, finding?.origin.end)).toBe('bend 90 deg radius 10 mm');
  });

  it('within its limits may be wide enough', () => {
    expect(said('bend-tight', bent('straight 60 mm, bend 90 deg radius 24 mm ± 2 mm, straight 60 mm'))).toEqual([]);
  });

  it('at a point is a bend too', () => {
    const text = bent('point (0 mm, 0 mm, 0 mm), point (100 mm, 0 mm, 0 mm) radius 9 mm, point (100 mm, 100 mm, 0 mm)');
    expect(graded('bend-tight', text)).toEqual(['warning']);
  });
});

describe('Clips', () => {
  const clipped = (clip: string, length = 'length 1800 mm') => `run line { tube 3/16 in  ${length}  clip ${clip} }\n`;

  it('are judged by the widest stretch, ends included', () => {
    expect(said('clips-apart', clipped('at 300 mm, 600 mm, 900 mm, 1200 mm'))).toEqual([
      'line hangs free for 600 mm, from the clip at 1200 mm to its end. The trade puts one every 305 mm to 457 mm; no standard says so. Add clips, closer at bends and beside a hose.',
    ]);
  });

  it('are not judged beyond the last where the length is not known', () => {
    expect(said('clips-apart', clipped('at 300 mm, 600 mm', 'length ?'))).toEqual([]);
  });

  it('are a warning where the stretch is twice what the trade bears', () => {
    expect(graded('clips-apart', clipped('every 500 mm'))).toEqual(['information']);
    expect(graded('clips-apart', clipped('every 1 m'))).toEqual(['warning']);
  });
});

describe('Sizes', () => {
  it('that no vehicle has are shown with those that vehicles have, in the writer’s kind of unit', () => {
    expect(said('magnitude', `master main single { bore 3 m  port out: ${seat} plugged }`)).toEqual([
      'Bore of main is 3 m, more than on any vehicle: master cylinder bore goes from 8 mm to 65 mm (from a motorcycle’s lever to a lorry’s pedal). Check the number and its unit.',
    ]);
    expect(said('magnitude', 'hose front { length 40 ft }')[0]).toContain('hose length goes from 1.97 in to 157 in');
  });

  it('are asked about when assumed, and not when only the width of a limit is odd', () => {
    expect(said('magnitude', `master main single { bore ? assume 3 m  port out: ${seat} plugged }`)).toHaveLength(1);
    expect(said('magnitude', 'run line { tube 3/16 in  length 20 mm ± 10 mm }')).toEqual([]);
  });

  describe('of the pressure that the stated push makes, against a rating', () => {
    const pressed = (lines: string) => `pedal foot { ratio 6  push 1500 N  pushes main }
master main single { bore 3/4 in  stroke 30 mm  port out: ${seat} }
hose front {
  rating 100 bar
${lines}`;

    it('is push × ratio / area: 1500 N × 6 on π/4 × (19.05 mm)² is 31.58 MPa (Pascal)', () => {
      expect(said('magnitude', pressed(`  from main.out: 3/8-24 male inverted-flare fixed\n}`))).toEqual([
        expect.stringContaining('makes 315.8 bar in main'),
      ]);
    });

    it('is not judged behind a valve, which may hold it back', () => {
      const limited = `  from limiter.out: 3/8-24 male inverted-flare fixed
}
proportioning-valve limiter { ports in, out: ${seat}  split-point 30 bar  slope 0.1 }
run feed { tube 3/16 in wall 0.028 in steel  nut 3/8-24  flare double-45  from main.out  to limiter.in  length 1 m }`;
      expect(said('magnitude', pressed(limited))).toEqual([]);
    });

    it('is not judged where the bore leaves it open', () => {
      const open = pressed(`  from main.out: 3/8-24 male inverted-flare fixed\n}`);
      expect(said('magnitude', open.replace('bore 3/4 in', 'bore ?'))).toEqual([]);
    });
  });

  it.each([
    ['vehicle van { first-use 61 }', 'first-use of van is 61'],
    ['vehicle van { sprung axle travel 1.6 m }', 'travel of axle'],
    ['vehicle van { load empty { front 690000 kg } }', 'front of load empty'],
    ['drum-brake rear-left { drum 11 mm }', 'diameter of rear-left drum'],
    ['run line { tube 4.75 mm wall 7 mm }', 'wall of line'],
    ['run line { tube 4.75 mm  route straight 90 m }', 'straight of line'],
  ])('%s', (text, words) => {
    expect(said('magnitude', text)[0]?.toLowerCase()).toContain(words.toLowerCase());
  });
});

describe('A length and a route', () => {
  it('that disagree are both shown', () => {
    const text =
      'run line { tube 3/16 in  length 700 mm  route straight 300 mm, bend 90 deg radius 25 mm, straight 300 mm }\n';
    // 300 + 300 + 25 π/2 = 639.3 mm
    expect(said('length-disagrees', text)[0]).toMatch(
      /^line is 700 mm long by its length and 639\.3 mm by its route: they are 60\.73 mm apart\./,
    );
  });
});

describe('A line of stock or of a mirrored run', () => {
  it('is spoken of once, for all that it speaks for', () => {
    const text = `stock line { tube 3/16 in  clip every 900 mm }
run left of line {}
run right of line {}
run rear of line {}
`;
    const [finding, ...more] = findingsOf('clips-apart', text);
    expect(more).toEqual([]);
    expect(finding?.message).toContain('The same line speaks for right and rear.');
    expect(finding?.also).toEqual(['right', 'rear']);
    expect(text.slice(finding?.origin.start, finding?.origin.end)).toBe('clip every 900 mm');
  });

  it('is where a bend radius stands that all bends of the stock have', () => {
    const text = `stock line { tube 3/16 in  bend-radius 10 mm }
run left of line { route straight 50 mm, bend 90 deg, straight 50 mm }
run right of line { route straight 50 mm, bend 90 deg, straight 90 mm }
mirror right as other-right
`;
    const [finding, ...more] = findingsOf('bend-tight', text);
    expect(more).toEqual([]);
    expect(text.slice(finding?.origin.start, finding?.origin.end)).toBe('bend-radius 10 mm');
    expect(finding?.also).toEqual(['right', 'other-right']);
  });
});
