import { describe, expect, it } from 'vitest';
import { flareForms } from '../../language/standards/flare-forms.ts';
import { flareInSeat, flaresFor, seatOnSeat, seatsFor } from '../../language/standards/mating.ts';
import { gendersJoin, seatNames, seats, seatTakesThread } from '../../language/standards/seats.ts';
import { threads } from '../../language/standards/thread-table.ts';

const threadNamed = (name: string) => {
  const found = threads.find((thread) => thread.name === name);
  if (!found) throw new Error(`no thread ${name}`);
  return found;
};

describe('a flare in a seat', () => {
  // SAE J512 and J533, ISO 4038: five pairs seal and no other.
  const sealing = [
    'double-45 inverted-flare',
    'double-45 45-degree',
    'single-45 45-degree',
    'single-37 37-degree',
    'bubble bubble',
  ];

  it.each(flareForms.flatMap((flare) => seatNames.map((seat) => [flare, seat] as const)))('%s in %s', (flare, seat) => {
    const mating = flareInSeat(flare, seat);
    expect(mating.kind).toBe(sealing.includes(`${flare} ${seat}`) ? 'seals' : 'does-not-seal');
    expect(mating.source.text).not.toBe('');
    if (mating.kind === 'does-not-seal') expect(mating.why.length).toBeGreaterThan(30);
  });

  it('says what is wrong with a double flare in a bubble port and with a bubble flare on a cone', () => {
    expect(flareInSeat('double-45', 'bubble')).toMatchObject({ why: expect.stringContaining('no cone') });
    expect(flareInSeat('bubble', 'inverted-flare')).toMatchObject({ why: expect.stringContaining('thin line') });
    expect(flareInSeat('none', 'inverted-flare')).toMatchObject({ why: expect.stringContaining('pulls out') });
  });

  it('offers the seats of a flare and the flares of a seat, the one being the other turned round', () => {
    expect(seatsFor('double-45')).toEqual(['inverted-flare', '45-degree']);
    expect(flaresFor('45-degree')).toEqual(['double-45', 'single-45']);
    expect(flaresFor('taper')).toEqual([]);
    for (const flare of flareForms)
      for (const seat of seatNames) expect(seatsFor(flare).includes(seat)).toBe(flaresFor(seat).includes(flare));
  });

  it('needs a nut exactly where flared tube goes', () => {
    for (const seat of seatNames) expect(seats[seat].nutGender !== undefined).toBe(flaresFor(seat).length > 0);
  });
});

describe('parts screwed together', () => {
  it('seal when both are made for the same way of sealing, whichever is named first', () => {
    for (const a of seatNames)
      for (const b of seatNames) {
        expect(seatOnSeat(a, b).kind).toBe(seatOnSeat(b, a).kind);
        expect(seatOnSeat(a, b).kind === 'seals').toBe(
          a === b || (seats[a].sealing === 'washer' && seats[b].sealing === 'washer'),
        );
      }
  });

  it('are one male and one female', () => {
    expect(gendersJoin('male', 'female')).toBe(true);
    expect(gendersJoin('female', 'female')).toBe(false);
  });
});

describe('a seat and its thread', () => {
  it.each([
    ['inverted-flare', '3/8-24', true],
    ['inverted-flare', 'M10x1', true],
    ['inverted-flare', '1/8 NPT', false],
    ['taper', '1/8 NPT', true],
    ['taper', '1/8 BSPT', true],
    ['taper', '1/8 BSP', false],
    ['taper', '3/8-24', false],
    ['washer', '1/8 BSP', true],
    ['bubble', 'M10x1', true],
    ['banjo', '7/16-20', true],
  ] as const)('%s on %s: %s', (seat, thread, fits) => {
    expect(seatTakesThread(seat, threadNamed(thread))).toBe(fits);
  });
});
