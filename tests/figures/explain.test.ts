import { describe, expect, it } from 'vitest';
import { explainFigure, sayFigure } from '../../language/figures/index.ts';
import { figure, figuresIn } from './ask.ts';

const told = (text: string, subject: string, id: string): readonly string[] =>
  explainFigure(figure(figuresIn(text), subject, id)).map(({ kind, text: line }) => `${kind}: ${line}`);

describe('a figure explains itself', () => {
  it('with what it is, how it is worked out, from what and on whose word', () => {
    expect(told('run line { tube 4.75 mm wall 0.7 mm flare none length 1372 mm }', 'line', 'run.cut-length')).toEqual([
      'figure: cut length 1372 mm',
      'formula: = centreline length + flare allowance at each end',
      'input: centreline length of line: 1372 mm',
      'input: allowance for a plain square end at the from end of line: 0 mm; nothing goes into a plain end (common practice: a plain end is left as it is cut)',
      'input: allowance for a plain square end at the to end of line: 0 mm; nothing goes into a plain end (common practice: a plain end is left as it is cut)',
      'source: common practice: centreline length with the tube that each flare takes added; make a test flare on scrap',
      'note: Make a test flare on scrap of the same tube: tools take different amounts.',
    ]);
  });

  it('with the trade’s allowance for each double flare', () => {
    const lines = told('run line { tube 3/16 in flare double-45 length 1372 mm }', 'line', 'run.cut-length');
    expect(lines[0]).toMatch(/^figure: cut length 1378 mm/);
    expect(lines).toContainEqual(
      expect.stringMatching(
        /^input: allowance for a 45° double flare at the from end of line: 3 mm .*the trade allows 3 mm/,
      ),
    );
  });

  it('with what it waits for', () => {
    const text = 'run line { tube 3/16 in length ? }';
    expect(told(text, 'line', 'run.volume')).toEqual([
      'figure: fluid in it: not known; it waits for wall of tube line, length of line',
      'formula: = π/4 × (diameter − 2 × wall)² × centreline length',
      'input: diameter of tube line: 3/16 in',
      'input: wall of tube line: not known',
      'input: centreline length of line: not known',
      'waits-for: Waits for wall of tube line',
      'waits-for: Waits for length of line',
      'source: from memory: area of a circle and volume of a cylinder, as in the tables of Machinery’s Handbook',
      'note: Usual walls of 3/16 in tube: 0.028 in, 0.035 in. Measure a cut end.',
    ]);
  });

  it('with what a total is without', () => {
    const text = 'reservoir pot { compartment front { capacity 120 mL } compartment rear {} }';
    expect(told(text, 'pot', 'reservoir.volume')).toContain('left-out: Without capacity of pot rear');
  });

  it('with an assumption marked in the figure and as it is written in the file', () => {
    const text = 'drum-brake left { cylinder { bore ? assume 1 in port feed: 3/8-24 } }';
    expect(told(text, 'left.cylinder', 'cylinder.area').slice(0, 3)).toEqual([
      'figure: area of a piston 0.7854 in² (assumed)',
      'formula: = π/4 × bore²',
      'input: bore of left cylinder: ? assume 1 in',
    ]);
  });

  it('pointing to where the file says it', () => {
    const text = 'run line { tube 3/16 in wall 0.028 in length 52 in }';
    const origins = explainFigure(figure(figuresIn(text), 'line', 'run.volume'))
      .filter(({ kind }) => kind === 'input')
      .map(({ origin }) => origin && text.slice(origin.start, origin.end));
    expect(origins).toEqual(['tube 3/16 in wall 0.028 in', 'tube 3/16 in wall 0.028 in', 'line']);
  });

  it('with few names where many are missing', () => {
    const tees = Array.from({ length: 20 }, (_, index) => `tee t${index} { ports a, b, c: 3/8-24 inverted-flare }`);
    const runs = tees.map((_, index) => {
      const from = index === 0 ? 'main.out' : `t${index - 1}.b`;
      return `run r${index} { tube 3/16 in wall 0.028 in length 1 m from ${from} to t${index}.a }`;
    });
    const master = 'master main single { bore 20 mm stroke 10 mm port out: 3/8-24 inverted-flare }';
    const figures = figuresIn([master, ...tees, ...runs].join('\n'));
    const lines = explainFigure(figure(figures, 'main', 'circuit.volume'));
    expect(lines.filter(({ kind }) => kind === 'left-out')).toHaveLength(13);
    expect(lines.map(({ text }) => text)).toContain('Without 8 more that are not known');
    expect(sayFigure(figure(figures, 'main', 'circuit.volume'))).toMatch(/^fluid in circuit main at least 178\.\d mL$/);
  });
});
