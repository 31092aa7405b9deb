import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { run } from '../../server/command/run.ts';
import { root } from '../architecture/sources.ts';
import { captured } from './captured.ts';
import { garage, soundCircuit } from './garage.ts';

const folder = garage({
  'sound.circuit': soundCircuit,
  'cut-off.circuit': soundCircuit.slice(0, soundCircuit.indexOf('clutch-slave')).concat('run {{{'),
});
const van = join(root, 'examples', 'orchard-van', 'orchard-van.circuit');

async function figures(...args: readonly string[]) {
  const terminal = captured(folder);
  const code = await run(['figures', ...args], terminal);
  return { code, printed: terminal.printed(), complained: terminal.complained() };
}

describe('figures', () => {
  it('come in the units of the file, each with its formula, inputs, source and cautions', async () => {
    const { code, printed } = await figures('sound.circuit');
    expect(code).toBe(0);
    expect(printed).toMatch(/^Hand cart, figures as planned\nsound\.circuit\n/);
    const [, run = ''] = /^run line {2}sound\.circuit:15:5\n([\s\S]*?)\n\n/m.exec(printed) ?? [];
    expect(run).toMatch(/^ {2}cut length +52 1\/4 in \(51 5\/8 \.\. 52 3\/4 in\)$/m);
    expect(run).toMatch(/^ {6}= centreline length \+ flare allowance at each end \[\d+\]/m);
    expect(run).toMatch(/^ {6}centreline length of line: 52 in ± 1\/2 in$/m);
    // Bore of 3/16 in tube with 0.028 in wall: 3.340 mm; 52 in of it hold 11.57 mL (π/4 × 3.340² × 1320.8 mm³).
    expect(run).toMatch(/^ {2}fluid in it +11\.57 mL/m);
    expect(printed).toMatch(/^Sources\n {2}\[1\] /m);
    expect(printed).toContain('Brakes can kill.');
  });

  it('line up in one column over all parts', async () => {
    const { printed } = await figures(van);
    const values = printed.split('\n').filter((line) => /^ {2}(cut length|fluid in it|piston area) {2,}\S/.test(line));
    expect(values.length).toBeGreaterThan(20);
    expect(new Set(values.map((line) => /^ {2}\S.*? {2,}/.exec(line)?.[0].length)).size).toBe(1);
  });

  it('name what a figure waits for instead of guessing it', async () => {
    const { printed } = await figures('sound.circuit');
    expect(printed).toMatch(/fluid at the full mark +not known\n.*\n.*\n +waits for capacity of main reservoir/);
    expect(printed).toMatch(/fluid in circuit main +at least /);
    expect(printed).toMatch(/To be measured \(1\)/);
  });

  it('mark every source that is named below, and name every source that is marked', async () => {
    const { printed } = await figures(van);
    const [table = '', below = ''] = printed.split('\nNotes\n');
    const marks = (text: string) => new Set(text.match(/\[\d+\]|(?<=[ )])\([a-z]\)(?= |$)/gm));
    const named = new Set([...below.matchAll(/^ {2}(\[\d+\]|\([a-z]\)) /gm)].map(([, mark]) => mark));
    expect(marks(table)).toEqual(named);
    expect(named.size).toBeGreaterThan(5);
  });

  it('differ between the circuit as found and as planned', async () => {
    const found = (await figures(van, '--as', 'found')).printed;
    const planned = (await figures(van)).printed;
    expect(found).toContain('run old-rear-line');
    expect(found).not.toContain('run rear-line ');
    expect(planned).toContain('run rear-line ');
    expect(planned).not.toContain('run old-rear-line');
  });

  it('of broken text are those of the rest, and this is said', async () => {
    const { code, printed, complained } = await figures('cut-off.circuit');
    expect(code).toBe(1);
    expect(printed).toContain('52 1/4 in');
    expect(complained).toMatch(/^cut-off\.circuit:\d+:\d+ error syntax: /);
    expect(complained).toContain('Only the rest of the file is shown');
  });

  it('are asked for one file at a time', async () => {
    expect((await figures()).complained).toMatch(/^Name one circuit file\.\n/);
    expect((await figures('a.circuit', 'b.circuit')).code).toBe(2);
  });
});
