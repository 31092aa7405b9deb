import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { flareForms } from '../../language/standards/flare-forms.ts';
import { seatNames } from '../../language/standards/seats.ts';
import { threads } from '../../language/standards/thread-table.ts';
import { hoseInPort, misfitsIn, tubeInPort } from './joint.ts';

const straightThreads = threads.filter(({ taper }) => taper === 'straight').map(({ name }) => name);
const tapered = threads.filter(({ taper }) => taper === 'tapered').map(({ name }) => name);

/** Nuts over tube go into these (SAE J512, J533, J514; ISO 4038): flare, seat, gender of the port. */
const sealing = [
  'double-45 inverted-flare female',
  'bubble bubble female',
  'double-45 45-degree male',
  'single-45 45-degree male',
  'single-37 37-degree male',
];

const genders = fc.constantFrom('male', 'female');
const seats = fc.constantFrom(...seatNames.filter((seat) => seat !== 'taper'));

describe('a joint is judged once', () => {
  it('a tube end: silent exactly when thread, flare, seat and gender belong together', () => {
    fc.assert(
      fc.property(
        fc.record({
          nut: fc.constantFrom(...straightThreads),
          thread: fc.constantFrom(...straightThreads),
          same: fc.boolean(),
          flare: fc.constantFrom(...flareForms),
          seat: seats,
          gender: genders,
        }),
        ({ nut, thread, same, flare, seat, gender }) => {
          const cut = same ? nut : thread;
          // Pipe threads carry straight seats too, so that only the pairs decide.
          const findings = misfitsIn(tubeInPort({ port: `${cut} ${gender} ${seat}`, nut, flare }));
          const fits = cut === nut && sealing.includes(`${flare} ${seat} ${gender}`);
          expect(findings).toHaveLength(fits ? 0 : 1);
        },
      ),
      { numRuns: 300 },
    );
  });

  it('a hose end: silent exactly when one is male, the other female, with one thread and one way of sealing', () => {
    fc.assert(
      fc.property(
        fc.record({
          end: fc.constantFrom(...straightThreads),
          thread: fc.constantFrom(...straightThreads),
          same: fc.boolean(),
          endSeat: seats,
          seat: seats,
          sameSeat: fc.boolean(),
          gender: genders,
          endGender: genders,
        }),
        ({ end, thread, same, endSeat, seat, sameSeat, gender, endGender }) => {
          const cut = same ? end : thread;
          const portSeat = sameSeat ? endSeat : seat;
          const findings = misfitsIn(hoseInPort(`${cut} ${gender} ${portSeat}`, `${end} ${endGender} ${endSeat}`));
          const washers = ['washer', 'banjo'];
          const seals = portSeat === endSeat || (washers.includes(portSeat) && washers.includes(endSeat));
          expect(findings).toHaveLength(cut === end && gender !== endGender && seals ? 0 : 1);
        },
      ),
      { numRuns: 300 },
    );
  });

  it('a tapered end in a straight port is that, whatever the sizes', () => {
    for (const taper of tapered)
      for (const straight of straightThreads) {
        const findings = misfitsIn(hoseInPort(`${straight} washer`, `${taper} male taper`));
        expect(findings.map(({ code }) => code)).toEqual(['taper-in-straight']);
      }
  });

  it('a port that contradicts itself is spoken of alone', () => {
    const findings = misfitsIn(tubeInPort({ port: '1/8 NPT inverted-flare', nut: '3/8-24', flare: 'double-45' }));
    expect(findings.map(({ code, subject }) => [code, subject])).toEqual([['seat-and-thread', 'main.out']]);
  });
});

describe('the seats', () => {
  it('a thread that fits over a seat that does not is an error that says both seats', () => {
    const [finding] = misfitsIn(hoseInPort('3/8-24 inverted-flare', '3/8-24 male bubble'));
    expect(finding).toMatchObject({ code: 'seat-mismatch', severity: 'error' });
    expect(finding?.message).toContain('has a bubble-flare seat and main.out has an inverted-flare seat');
    expect(finding?.message).toContain('However tight it is drawn, it does not seal.');
  });

  it.each([
    ['an eye on a washer face', 'M10x1 washer', 'banjo 10 mm', []],
    ['an eye on a face made for it', 'M10x1 banjo', 'banjo 10 mm', []],
    ['an eye on a cone', 'M10x1 inverted-flare', 'banjo 10 mm', ['seat-mismatch']],
    ['a low-pressure spigot in a threaded port', 'M10x1 bubble', 'barb 8 mm', ['thread-mismatch']],
  ])('%s', (_, port, end, codes) => {
    expect(misfitsIn(hoseInPort(port, end)).map(({ code }) => code)).toEqual(codes);
  });

  it('two eyes need a bolt between them', () => {
    const eyes = (kind: string) =>
      `hose a { length 300 mm  to b.${kind}: banjo 10 mm }\n${kind === 'from' ? 'hose b { length 300 mm  from : banjo 10 mm }' : 'banjo-bolt b { port shank: M10x1 male washer  port eye: banjo }'}`;
    expect(misfitsIn(eyes('from')).map(({ code }) => code)).toEqual(['gender-mismatch']);
    expect(misfitsIn(eyes('eye'))).toEqual([]);
  });
});

describe('the flares', () => {
  // SAE J512, scope page: steel inverted-flare seats are meant for double-flared tube.
  it('a single flare in an inverted-flare seat says why', () => {
    const [finding] = misfitsIn(tubeInPort({ port: '3/8-24 inverted-flare', nut: '3/8-24', flare: 'single-45' }));
    expect(finding?.code).toBe('flare-mismatch');
    expect(finding?.message).toContain('a single layer thins and splits between nut and cone');
    expect(finding?.mends?.map(({ title }) => title)).toEqual(['Make this end with flare double-45']);
  });

  it('steel or copper-nickel, wall and length make no difference to the fit', () => {
    const text = tubeInPort({ port: '3/8-24 inverted-flare', nut: '3/8-24', flare: 'double-45' });
    expect(misfitsIn(text.replace('steel', 'wall 0.035 in copper-nickel  length 2 m'))).toEqual([]);
  });

  it('a port for a washer is no place for any flare', () => {
    const [finding] = misfitsIn(tubeInPort({ port: 'M10x1 washer', nut: 'M10x1', flare: '?' }));
    expect(finding?.code).toBe('seat-mismatch');
  });
});
