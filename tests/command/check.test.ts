import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { run } from '../../server/command/run.ts';
import { painted } from '../../server/command/terminal.ts';
import { root } from '../architecture/sources.ts';
import { captured } from './captured.ts';
import { brokenJoint, garage, soundCircuit, wrongNut } from './garage.ts';

const folder = garage({
  'sound.circuit': soundCircuit,
  'broken.circuit': brokenJoint,
  'wrong-nut.circuit': wrongNut,
  'cut-off.circuit': soundCircuit.slice(0, soundCircuit.indexOf('52 in')),
  'wide.circuit': soundCircuit.replace('run line', '/* 5 µm 🚗 */ run lime {} run line'),
  'crlf.circuit': brokenJoint.replaceAll('\n', '\r\n'),
  'bom.circuit': `\ufeff${brokenJoint}`,
  'sub/inner.circuit': `use "../shelf.circuit"\n${soundCircuit.replace('run line', 'run line of steel-line')}`,
  'shelf.circuit': 'stock steel-line run {\n  tube 3/16 in wall 0.028 in bronze\n}\n',
});
const van = join(root, 'examples', 'orchard-van', 'orchard-van.circuit');

async function check(...args: readonly string[]) {
  const terminal = captured(folder);
  const code = await run(['check', ...args], terminal);
  return { code, printed: terminal.printed(), complained: terminal.complained() };
}

describe('check', () => {
  it('finds nothing wrong with a sound circuit, and says what is still to be measured', async () => {
    const { code, printed, complained } = await check('sound.circuit');
    expect({ code, complained }).toEqual({ code: 0, complained: '' });
    expect(printed).toBe(`Hand cart, as planned

To be measured (1)
  sound.circuit:12:24  capacity of main reservoir  not known

sound.circuit: no errors, no warnings

An aid, no authority: local codes, the vehicle maker's manual and licensed practice come first. Brakes can kill.
`);
  });

  it('names file, line and column from one, the rule, and what to do', async () => {
    const { code, printed } = await check('broken.circuit');
    expect(code).toBe(1);
    expect(printed).toContain(
      'broken.circuit:16:8 error unknown-name: There is no part called “mian”. Did you mean main?\n',
    );
    expect(printed).toContain('broken.circuit: 1 error, no warnings\n');
  });

  it('lists the other places that a finding speaks of', async () => {
    const { printed } = await check('wrong-nut.circuit');
    expect(printed).toMatch(/^wrong-nut\.circuit:16:8 error thread-mismatch: .*M10x1.*3\/8-24/m);
    expect(printed).toMatch(/^ {4}wrong-nut\.circuit:11:8 main\.out is 3\/8-24/m);
  });

  it('reports broken text as an error in its place', async () => {
    const { code, printed } = await check('cut-off.circuit');
    expect(code).toBe(1);
    expect(printed).toMatch(/^cut-off\.circuit:2[12]:\d+ error syntax: /m);
  });

  it('counts columns as editors do, whatever stands before them', async () => {
    const { printed } = await check('wide.circuit');
    // The comment is 13 UTF-16 units long, the car among them being two.
    expect(printed).toMatch(/^wide\.circuit:15:19 warning unused: lime /m);
  });

  it('counts the same lines and columns with carriage returns and with a byte order mark', async () => {
    expect((await check('crlf.circuit')).printed).toContain('crlf.circuit:16:8 error unknown-name');
    expect((await check('bom.circuit')).printed).toContain('bom.circuit:16:8 error unknown-name');
  });

  it('points into the used file where the fault is there', async () => {
    const terminal = captured(join(folder, 'sub'));
    await run(['check', 'inner.circuit'], terminal);
    // Without a checkout a file may use others from the folder of the command only.
    expect(terminal.printed()).toMatch(/^inner\.circuit:1:5 error use-failed: .*outside/m);
    const above = await check('sub/inner.circuit');
    expect(above.printed).toMatch(/^shelf\.circuit:2:30 error .*bronze/m);
  });

  it('judges the circuit as found or as planned', async () => {
    const found = await check(van, '--as', 'found');
    const planned = await check(van, '--as=planned');
    expect(found.printed).toContain('Orchard delivery van, as found\n');
    expect(found.printed).toContain('warning single-point-of-failure: ');
    expect(planned.printed).toContain('Orchard delivery van, as planned\n');
    expect(planned.printed).not.toContain('single-point-of-failure');
  });

  it('lets warnings pass unless it is to be strict', async () => {
    const { printed } = await check(van, '--as', 'found');
    expect(printed).toMatch(/: no errors, [1-9]\d* warnings?/);
    expect((await check(van, '--as', 'found')).code).toBe(0);
    expect((await check(van, '--as', 'found', '--strict')).code).toBe(1);
    expect((await check('sound.circuit', '--strict')).code).toBe(0);
  });

  it('checks several files and adds them up', async () => {
    const { code, printed } = await check('sound.circuit', 'broken.circuit', 'wrong-nut.circuit');
    expect(code).toBe(1);
    expect(printed).toMatch(/^3 files as planned: 3 errors, no warnings$/m);
    expect(printed.match(/Brakes can kill/g)).toHaveLength(1);
  });

  it('checks what can be read beside what cannot, and ends with 2', async () => {
    const { code, printed, complained } = await check('absent.circuit', 'broken.circuit');
    expect(code).toBe(2);
    expect(printed).toContain('broken.circuit:16:8 error');
    expect(complained).toBe('absent.circuit: There is no such file.\n');
  });

  it('paints severities where it may, and says the same without paint', async () => {
    const bright = captured(folder, painted);
    await run(['check', 'broken.circuit'], bright);
    expect(bright.printed()).toContain('broken.circuit:16:8 \u001b[31merror\u001b[39m ');
    const escapes = new RegExp(`${String.fromCharCode(27)}\\[\\d+m`, 'g');
    expect(bright.printed().replace(escapes, '')).toBe((await check('broken.circuit')).printed);
  });

  it('says the same words each time', async () => {
    expect(await check(van)).toEqual(await check(van));
  });
});

describe('arguments of check', () => {
  it.each([
    [[], 'Name at least one circuit file.'],
    [['--as', 'bought', 'sound.circuit'], '--as takes planned or found, not “bought”.'],
    [['--format', 'xml', 'sound.circuit'], '--format takes text or json, not “xml”.'],
    [['--colour', 'sound.circuit'], 'There is no option --colour. There are --as, --format, --strict, --help.'],
    [['--strict=yes', 'sound.circuit'], '--strict takes no value.'],
    [['sound.circuit', '--as'], '--as needs a value behind it.'],
  ])('%j is answered in words', async (args, message) => {
    const { code, printed, complained } = await check(...args);
    expect({ code, printed, complained }).toEqual({
      code: 2,
      printed: '',
      complained: `${message}\nSee linewright check --help.\n`,
    });
  });
});
