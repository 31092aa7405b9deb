import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { strippingPairs } from '../../language/standards/stripping-pairs.ts';
import { threads } from '../../language/standards/thread-table.ts';
import { readThread, sameThread, startsAndStrips, type Thread } from '../../language/standards/threads.ts';

function thread(name: string): Thread {
  const reading = readThread(name);
  if (!reading.thread) throw new Error(reading.problem);
  return reading.thread;
}

const millimetres = (length: number) => length * 1000;

describe('names of threads', () => {
  it.each([
    [
      '3/8-24',
      ['3/8-24 UNF', '3/8 - 24', '3/8x24', '3/8 × 24', '3/8-24 UNF-2B', '0.375-24', '3/8 UNF', '3/8-24 TPI', '3/8–24'],
    ],
    ['7/16-24', ['7/16-24 UNS', '7/16-24UNS']],
    ['M10x1', ['M10x1.0', 'm10×1', 'M10 x 1.00', 'M10X1', 'M10-1', 'M10x1-6g']],
    ['M8x1.25', ['M8×1.25', 'm8 x 1.250']],
    ['1/8 NPT', ['1/8-27 NPT', '1/8 npt', '1/8NPTF', '1/8-27NPTF']],
    ['1/8 BSP', ['G 1/8', 'G1/8', '1/8 BSPP', '1/8-28 BSP']],
    ['1/8 BSPT', ['R 1/8']],
    ['3/8 BSF', ['3/8-20 BSF', '3/8bsf']],
  ])('%s is also written %j', (name, spellings) => {
    expect(thread(name).name).toBe(name);
    for (const spelling of spellings) expect(thread(spelling)).toBe(thread(name));
  });

  it('are unique: no spelling names two rows', () => {
    for (const row of threads) for (const name of [row.name, ...row.spellings]) expect(thread(name)).toBe(row);
  });

  it('outside the table give their size, and say that they are unlisted', () => {
    const { name, listed, majorDiameter, pitch, form } = thread('M13 x 1.25');
    expect({ name, listed, form }).toEqual({ name: 'M13x1.25', listed: false, form: 'metric' });
    expect(millimetres(majorDiameter)).toBeCloseTo(13, 9);
    expect(millimetres(pitch)).toBeCloseTo(1.25, 9);
    const mixed = thread('1-1/16-12 UN');
    expect(mixed.name).toBe('1 1/16-12');
    expect(millimetres(mixed.majorDiameter)).toBeCloseTo(26.9875, 9);
    expect(thread('1 1/16-12')).toEqual(mixed);
    expect(thread('5/16-20 BSF').flankAngle).toBeCloseTo((55 * Math.PI) / 180, 12);
  });

  it.each([
    ['M10', 'M10 alone does not say the pitch'],
    ['M10x12', 'cannot be cut on 10 mm'],
    ['M500x2', 'outside 1 mm to 100 mm'],
    ['3/0-24', 'outside'],
    ['9/1-24', 'outside'],
    ['1/4-400', 'cannot be cut'],
    ['4-40', 'not the name of a thread'],
    ['big one', 'not the name of a thread'],
    ['', 'not the name of a thread'],
    ['M'.repeat(100), 'too long'],
  ])('%s is refused in plain words', (text, words) => {
    expect(readThread(text).problem).toContain(words);
  });

  it('never throw, and every size they give is finite', () => {
    const nearThreads = fc.stringMatching(/^[MG]?[0-9./ x-]{0,12}( NPT| BSF)?$/);
    fc.assert(
      fc.property(fc.oneof(fc.string(), nearThreads), (text) => {
        const { thread: read, problem } = readThread(text);
        if (!read) {
          expect(problem).not.toBe('');
          return;
        }
        expect(read.majorDiameter).toBeGreaterThan(read.pitch);
        expect(read.pitch).toBeGreaterThan(0);
        expect(thread(read.name)).toEqual(read);
      }),
    );
  });
});

describe('sizes of threads', () => {
  // SAE J512 inverted-flare series as tabled in the project's notes: major diameter and pitch in mm.
  it.each([
    ['5/16-28', 7.94, 0.907],
    ['3/8-24', 9.53, 1.058],
    ['7/16-24', 11.11, 1.058],
    ['1/2-20', 12.7, 1.27],
    ['5/8-18', 15.88, 1.411],
    ['11/16-18', 17.46, 1.411],
    ['3/4-18', 19.05, 1.411],
    // ASME B1.20.1 and ISO 228-1, from memory
    ['1/8 NPT', 10.287, 0.941],
    ['1/4 NPT', 13.716, 1.411],
    ['1/8 BSP', 9.728, 0.907],
    ['1/4 BSP', 13.157, 1.337],
    ['3/8 BSF', 9.525, 1.27],
  ])('%s: %f mm, pitch %f mm', (name, major, pitch) => {
    expect(Math.abs(millimetres(thread(name).majorDiameter) - major)).toBeLessThan(0.006);
    expect(Math.abs(millimetres(thread(name).pitch) - pitch)).toBeLessThan(0.0006);
  });

  it('only pipe threads for sealing on the thread are tapered', () => {
    expect(threads.filter(({ taper }) => taper === 'tapered').map(({ form }) => form)).toEqual(
      expect.arrayContaining(['npt', 'bsp']),
    );
    expect(thread('G 1/8').taper).toBe('straight');
    expect(sameThread(thread('G 1/8'), thread('R 1/8'))).toBe(false);
  });
});

describe('threads that start into one another and strip', () => {
  it.each([
    ['3/8-24', 'M10x1'],
    ['7/16-20', '7/16-24'],
    ['1/8 NPT', '1/8 BSP'],
  ])('%s and %s, either way round', (a, b) => {
    expect(startsAndStrips(thread(a), thread(b))?.why).toMatch(/strip|cross/);
    expect(startsAndStrips(thread(b), thread(a))).toBe(startsAndStrips(thread(a), thread(b)));
  });

  it('a thread never strips itself, and plainly different ones do not start', () => {
    for (const row of threads) expect(startsAndStrips(row, row)).toBeUndefined();
    expect(startsAndStrips(thread('3/8-24'), thread('9/16-18'))).toBeUndefined();
    expect(startsAndStrips(thread('M10x1'), thread('M12x1'))).toBeUndefined();
  });

  it('every pair names two tabled threads that are near each other in diameter, and different', () => {
    for (const {
      threads: [first, second],
    } of strippingPairs) {
      const [a, b] = [thread(first), thread(second)];
      expect([a.name, b.name]).toEqual([first, second]);
      expect(sameThread(a, b)).toBe(false);
      expect(Math.abs(a.majorDiameter / b.majorDiameter - 1)).toBeLessThan(0.07);
    }
  });
});
