import { describe, expect, it } from 'vitest';
import { bendLimitBroken, bendLimits } from '../../language/standards/bend-radius.ts';
import { clipSpacing } from '../../language/standards/clip-spacing.ts';
import { coneAllowance, flareAllowance, flareHeads } from '../../language/standards/flares.ts';
import { readThread, type Thread } from '../../language/standards/threads.ts';
import { tubeMaterials } from '../../language/standards/tube-materials.ts';
import { nutBores, nutOnTube, nutsFor, tubeNuts } from '../../language/standards/tube-nuts.ts';
import { sameTubeSize, tubeSizeOf, tubeSizes } from '../../language/standards/tube-sizes.ts';
import { inch, mm } from '../../language/standards/written-units.ts';

function thread(name: string): Thread {
  const reading = readThread(name);
  if (!reading.thread) throw new Error(reading.problem);
  return reading.thread;
}

describe('tube nuts', () => {
  // SAE J512 inverted-flare series: tube size and thread, in the order of the series.
  it.each([
    [1 / 8, '5/16-28'],
    [3 / 16, '3/8-24'],
    [1 / 4, '7/16-24'],
    [5 / 16, '1/2-20'],
    [3 / 8, '5/8-18'],
    [7 / 16, '11/16-18'],
    [1 / 2, '3/4-18'],
  ])('%f in tube takes %s in an inverted-flare port', (size, name) => {
    expect(nutsFor(inch(size), 'inverted-flare').map((nut) => nut.thread)).toContain(name);
    expect(nutOnTube(thread(name), inch(size), 'inverted-flare')).toMatchObject({
      kind: 'listed',
      nut: { use: 'usual' },
    });
  });

  // ISO 4038 / SAE J1290
  it.each([
    [4.75, 'M10x1'],
    [6, 'M12x1'],
    [8, 'M14x1.5'],
  ])('%f mm pipe takes %s in a bubble-flare port', (size, name) => {
    expect(nutsFor(mm(size), 'bubble').map((nut) => nut.thread)).toContain(name);
    expect(nutOnTube(thread(name), mm(size), 'bubble')).toMatchObject({ kind: 'listed', nut: { use: 'usual' } });
  });

  it.each(['7/16-24', '1/2-20', '9/16-18', '9/16-20'])('%s is also made oversize over 3/16 in tube', (name) => {
    expect(nutOnTube(thread(name), inch(3 / 16), 'inverted-flare')).toMatchObject({
      kind: 'listed',
      nut: { use: 'oversize' },
    });
    expect(nutBores(name)).toContain(inch(3 / 16));
  });

  it('a 1/4 in line takes 7/16-20 in 37° and 45° fittings and 7/16-24 in inverted flares of this series', () => {
    expect(nutsFor(inch(1 / 4), '37-degree').map((nut) => nut.thread)).toEqual(['7/16-20']);
    expect(nutOnTube(thread('7/16-24'), inch(1 / 4), '37-degree')).toMatchObject({
      kind: 'not-listed',
      usual: [{ thread: '7/16-20' }],
    });
  });

  it('a tube as thick as the core of the thread cannot be nutted; an unlisted pair gets no verdict', () => {
    expect(nutOnTube(thread('3/8-24'), inch(3 / 8), 'inverted-flare').kind).toBe('impossible');
    expect(nutOnTube(thread('5/16-28'), inch(5 / 16), 'inverted-flare').kind).toBe('impossible');
    expect(nutOnTube(thread('M14x1.5'), mm(4.75), 'bubble').kind).toBe('not-listed');
  });

  it('every row names a tabled thread and a tabled tube that fits through it', () => {
    for (const nut of tubeNuts) {
      expect(thread(nut.thread).name).toBe(nut.thread);
      expect(thread(nut.thread).majorDiameter - 1.0825 * thread(nut.thread).pitch).toBeGreaterThan(nut.tubeOd);
      expect(tubeSizeOf(nut.tubeOd)).toBeDefined();
    }
  });
});

describe('tube sizes', () => {
  it('3/16 in is 4.75 mm to a nut, 5/16 in is 8 mm, 1/4 in is not 6 mm', () => {
    expect(sameTubeSize(inch(3 / 16), mm(4.75))).toBe(true);
    expect(sameTubeSize(inch(5 / 16), mm(8))).toBe(true);
    expect(sameTubeSize(inch(1 / 4), mm(6))).toBe(false);
  });

  it('are found under their own name though another size is close', () => {
    for (const size of tubeSizes) expect(tubeSizeOf(size.od)).toBe(size);
    expect(tubeSizeOf(mm(5.4))).toBeUndefined();
  });

  it('have walls that leave a bore', () => {
    for (const { od, walls } of tubeSizes) for (const wall of walls) expect(od - 2 * wall).toBeGreaterThan(0.001);
  });
});

describe('tube materials', () => {
  // SAE J527: 290 and 170 MPa; ASTM B466 annealed: 262 and 90 MPa; C70600 data sheet: 18 million psi.
  it('have the least strengths of their standards', () => {
    expect(tubeMaterials.steel.leastTensile).toBe(290e6);
    expect(tubeMaterials.steel.leastYield).toBe(170e6);
    expect(tubeMaterials['copper-nickel'].leastTensile).toBe(262e6);
    expect(tubeMaterials['copper-nickel'].elasticModulus / 6894.757 / 1e6).toBeCloseTo(18, 1);
  });

  it('yield before they break, and are known by their own name', () => {
    for (const [name, row] of Object.entries(tubeMaterials)) {
      expect(row.name).toBe(name);
      expect(row.leastYield).toBeLessThan(row.leastTensile);
    }
  });
});

describe('bend radius', () => {
  // A vehicle maker's manual: 12 mm least, 20 mm to be avoided; DIN 74234 guide: 25 mm; rule of thumb 3 OD = 14.3 mm.
  it.each([
    [11.9, 'stop'],
    [12, 'rule'],
    [14.2, 'rule'],
    [14.3, 'avoid'],
    [16, 'avoid'],
    [20, 'guide'],
    [24.9, 'guide'],
    [25, undefined],
  ])('%f mm on 3/16 in tube: %s', (radius, level) => {
    expect(bendLimitBroken(mm(radius), inch(3 / 16))?.level).toBe(level);
  });

  it.each([
    [6, 17.9, 'rule'],
    [6, 18, undefined],
    [6, 8.9, 'stop'],
    [8, 23.9, 'rule'],
    [8, 24, undefined],
  ])('%f mm tube at %f mm: %s', (od, radius, level) => {
    expect(bendLimitBroken(mm(radius), mm(od))?.level).toBe(level);
  });

  it('limits stand the tightest first, each with its source', () => {
    for (const { od } of tubeSizes) {
      const radii = bendLimits(od).map(({ radius }) => radius);
      expect(radii).toEqual([...radii].sort((a, b) => a - b));
      for (const { source } of bendLimits(od)) expect(source.text).not.toBe('');
    }
  });
});

describe('flares', () => {
  // Geometry of a flare 7.0 mm across on 4.76 mm tube, worked by hand: 2.04784 mm double, 0.463919 mm single.
  it('take the tube that the cone’s geometry says', () => {
    expect(coneAllowance('double-45', mm(4.76), mm(7)) * 1000).toBeCloseTo(2.04784, 5);
    expect(coneAllowance('single-45', mm(4.76), mm(7)) * 1000).toBeCloseTo(0.463919, 5);
  });

  it('a 37° cone takes rise times tan of half its angle, 0.486 mm for a head of 0.302 in on 3/16 in', () => {
    // 1/sin a − 1/tan a = tan(a/2): CRC tables of half-angle identities
    const rise = ((0.302 - 3 / 16) * 0.0254) / 2;
    expect(coneAllowance('single-37', inch(3 / 16), inch(0.302))).toBeCloseTo(
      rise * Math.tan((18.5 * Math.PI) / 180),
      12,
    );
  });

  it('a double flare is allowed 3 mm as the trade does, more than geometry says', () => {
    const allowance = flareAllowance('double-45', inch(3 / 16));
    expect(allowance?.value).toBe(mm(3));
    expect((allowance?.low ?? 0) * 1000).toBeCloseTo(1.771, 3);
    expect(allowance?.high).toBe(inch(1 / 8));
    expect(allowance?.source.kind).toBe('common-practice');
  });

  it('metric sizes borrow the head of the inch size beside them; odd sizes have no allowance', () => {
    expect(flareAllowance('double-45', mm(4.75))).toEqual(flareAllowance('double-45', inch(3 / 16)));
    expect(flareAllowance('double-45', mm(6))?.value).toBe(mm(3));
    expect(flareAllowance('double-45', mm(12))).toBeUndefined();
    expect(flareAllowance('bubble', mm(3))).toBeUndefined();
  });

  it('bubble flares take 2 to 3 mm and say that this is from memory; a plain end takes nothing', () => {
    expect(flareAllowance('bubble', mm(4.75))).toMatchObject({
      value: mm(2.5),
      low: mm(2),
      high: mm(3),
      source: { kind: 'from-memory' },
    });
    expect(flareAllowance('none', mm(4.75))?.value).toBe(0);
  });

  it('the value lies between low and high, and heads are wider than their tube', () => {
    for (const { form, tubeOd, smallest, largest } of flareHeads) {
      expect(smallest).toBeGreaterThan(tubeOd);
      expect(largest).toBeGreaterThan(smallest);
      const allowance = flareAllowance(form, tubeOd);
      if (!allowance) throw new Error(`no allowance for ${form}`);
      expect(allowance.low).toBeLessThanOrEqual(allowance.value);
      expect(allowance.value).toBeLessThanOrEqual(allowance.high);
    }
  });
});

describe('clips', () => {
  it('stand 300 mm to 450 mm apart, closer beside a hose', () => {
    expect(clipSpacing.close * 1000).toBeCloseTo(304.8, 9);
    expect(clipSpacing.farthest * 1000).toBeCloseTo(457.2, 9);
    expect(clipSpacing.besideHoseEnd * 1000).toBeCloseTo(76.2, 9);
  });
});
