import { describe, expect, it } from 'vitest';
import { judge, ruleOf } from '../../language/rules/index.ts';
import { findingsOf } from '../support/findings.ts';
import { mended } from '../support/mend.ts';
import { readCircuit } from '../support/read.ts';

const said = (code: string, text: string, state: 'found' | 'planned' = 'planned') =>
  findingsOf(code, text, state).map(({ message }) => message);
const graded = (code: string, text: string) => findingsOf(code, text).map(({ severity }) => severity);

describe('The metal of the tube', () => {
  it('copper leaves to the local rule, and can be accepted with it', () => {
    const line = 'run line { tube 3/16 in wall 0.028 in copper  length 600 mm }\n';
    expect(said('copper-tube', line)[0]).toContain('ask your local code');
    expect(
      said('copper-tube', `${line}accept copper-tube on line 2026-03-01 because "allowed here for this class"\n`),
    ).toEqual([]);
  });

  it('aluminium is never accepted', () => {
    const line = 'run line { tube 3/16 in wall 0.028 in aluminium  length 600 mm }\n';
    const accepted = `${line}accept aluminium-tube on line 2026-03-01 because "it is light"\n`;
    expect(graded('aluminium-tube', accepted)).toEqual(['error']);
    expect(ruleOf('aluminium-tube')?.acceptable).toBe(false);
  });

  it('is said once for stock of which many lines are made', () => {
    const lines = ['one', 'two', 'three'].map((name) => `run ${name} of old { length 600 mm }\n`).join('');
    const findings = findingsOf('copper-tube', `stock old { tube 3/16 in wall 0.028 in copper }\n${lines}`);
    // Each line is named where it stands; the stock's line is not the place to accept one of them.
    expect(findings.map(({ subject }) => subject)).toEqual(['one', 'two', 'three']);
  });

  it('of what is taken off is no matter of the plan', () => {
    const line = 'to-remove run line { tube 3/16 in wall 0.028 in copper  length 600 mm }\n';
    expect(said('copper-tube', line)).toEqual([]);
    expect(said('copper-tube', line, 'found')).toHaveLength(1);
  });

  it('steel joined to copper-nickel is no finding', () => {
    const text = `union between { ports a, b: 3/8-24 inverted-flare }
run front { tube 3/16 in wall 0.028 in steel  nut 3/8-24  flare double-45  to between.a }
run rear { tube 3/16 in wall 0.028 in copper-nickel  nut 3/8-24  flare double-45  from between.b }
`;
    const codes = judge(readCircuit(text), 'planned').findings.map(({ code }) => code);
    expect(codes.filter((code) => /tube|joint|mismatch|end$/.test(code) && code !== 'dead-end')).toEqual([]);
  });
});

describe('A banjo bolt', () => {
  const bolt = (washers: string) =>
    `banjo-bolt bolt {\n  washers ${washers}\n  port shank: M10x1 male washer\n  port eye: banjo\n}\n`;

  it('with one washer says how many it takes, and mends it', () => {
    const text = bolt('1');
    const [finding] = findingsOf('banjo-washers', text);
    expect(finding?.message).toBe(
      'bolt clamps 1 eye with 1 washer; it takes 2, one on each side of the eye. Without a washer the eye leaks. Fit new ones of copper or aluminium each time.',
    );
    const [mend] = finding?.mends ?? [];
    expect(mend && mended(text, mend, readCircuit(text).uri)).toBe(bolt('2'));
    expect(findingsOf('banjo-washers', bolt('2'))).toEqual([]);
  });

  it('with one too many is a warning', () => {
    expect(graded('banjo-washers', bolt('3'))).toEqual(['warning']);
  });
});

describe('The strength of a tube', () => {
  const circuit = (pressure: string, tube = '3/16 in wall 0.028 in steel') => `master main single {
  port out: 3/8-24 inverted-flare
  2026-03-01 line-pressure ${pressure}
}
run line { tube ${tube}  nut 3/8-24  flare double-45  from main.out }
`;

  // 3/16 × 0.028 in of 290 MPa bursts at 86.61 MPa by Barlow: a quarter is 216.5 bar.
  it('is too little from a quarter of bursting on', () => {
    expect(graded('tube-strength', circuit('216 bar'))).toEqual([]);
    expect(graded('tube-strength', circuit('218 bar'))).toEqual(['warning']);
    expect(graded('tube-strength', circuit('870 bar'))).toEqual(['error']);
  });

  it('is not judged where the limits of the wall leave it open', () => {
    expect(said('tube-strength', circuit('218 bar', '3/16 in wall 0.028 in ± 0.001 in steel'))).toEqual([]);
  });

  it('says both numbers, the method and where the pressure was read', () => {
    expect(said('tube-strength', circuit('250 bar'))[0]).toMatch(
      /^line bursts at [\d,]+ psi \(Barlow, least strength of its material\), and 250 bar was read on main: a factor of 3\.46\d?\./,
    );
  });
});

describe('A rating', () => {
  it('is judged by what was read on the vehicle too', () => {
    const text = `vehicle van { 2026-03-01 line-pressure 120 bar }
master main single { port out: 3/8-24 inverted-flare }
hose front { rating 100 bar  from main.out: 3/8-24 male inverted-flare fixed  to left.cylinder.feed: 3/8-24 male inverted-flare swivel }
drum-brake left { cylinder { port feed: 3/8-24 inverted-flare  bleeder {} } }
`;
    expect(said('magnitude', text)).toEqual([
      expect.stringContaining('front is rated 100 bar, and 120 bar was measured in its circuit, at the vehicle.'),
    ]);
  });
});

describe('The age of a hose', () => {
  const hose = (dated: string, rest: string) => `hose front {\n  dated ${dated}\n}\n${rest}`;
  const kept = (date: string) => `pedal stop { ratio 6  ${date} keep }\n`;

  it('is counted to the latest date that the file has, wherever that is', () => {
    expect(said('hose-age', hose('2011-08', kept('2026-03-05')))[0]).toContain('14 years old at the latest date');
    expect(said('hose-age', hose('2011-08', 'fluid dot-4 { filled 2018-01 }\n'))[0]).toContain('6 years old');
    expect(said('hose-age', hose('2011-08', 'vehicle van { 2024-09-01 pedal-travel 70 mm at 300 N }\n'))[0]).toContain(
      '13 years old',
    );
  });

  it('is six years from the day on, and of a month from its end on', () => {
    expect(said('hose-age', hose('2020-03-10', kept('2026-03-09')))).toEqual([]);
    expect(said('hose-age', hose('2020-03-10', kept('2026-03-10')))).toHaveLength(1);
    expect(said('hose-age', hose('2020-03', kept('2026-03-30')))).toEqual([]);
    expect(said('hose-age', hose('2020-03', kept('2026-04-01')))).toHaveLength(1);
  });

  it('is information, never a warning: no standard limits it', () => {
    expect(graded('hose-age', hose('1990-01', kept('2026-03-05')))).toEqual(['information']);
  });

  it('is not told of a hose that is on its way out', () => {
    expect(said('hose-age', 'to-remove hose front { dated 2011-08  2026-03-01 found "cracked" }\n')).toEqual([]);
  });

  it('of a date that the calendar does not have is not told', () => {
    expect(said('hose-age', hose('2011-08', kept('2026-13-40')))).toEqual([]);
    expect(said('hose-age', hose('2011-44', kept('2026-03-05')))).toEqual([]);
  });
});
