import { symlinkSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { run, verbs } from '../../server/command/run.ts';
import { captured } from './captured.ts';
import { garage, soundCircuit } from './garage.ts';

const folder = garage({
  'bench/binary.circuit': new Uint8Array([0x89, 0x50, 0x4e, 0x47, 0, 1, 2, 3]),
  'bench/latin-1.circuit': new Uint8Array([0x2f, 0x2f, 0x20, 0xe9, 0x0a]),
  'bench/utf-16.circuit': new Uint8Array([0xff, 0xfe, 0x2f, 0, 0x2f, 0]),
  'bench/five-megabytes.circuit': '// rust\n'.repeat(655_360),
  'bench/notes.txt': 'tea at four',
  'bench/empty.circuit': '',
  'bench/drawer/stock.circuit': 'stock line run {}\n',
  'bench/uses-outside.circuit': `use "../secret.circuit"\n${soundCircuit}`,
  'bench/uses-absolute.circuit': `use "/etc/passwd"\n${soundCircuit}`,
  'bench/uses-folder.circuit': `use "drawer"\n${soundCircuit}`,
  'bench/uses-itself.circuit': `use "uses-itself.circuit"\n${soundCircuit}`,
  'bench/uses-missing.circuit': `use "gone.circuit"\n${soundCircuit}`,
  'bench/uses-link.circuit': `use "link.circuit"\n${soundCircuit}`,
  'bench/uses-binary.circuit': `use "binary.circuit"\n${soundCircuit}`,
  'bench/ring-a.circuit': `use "ring-b.circuit"\n${soundCircuit}`,
  'bench/ring-b.circuit': 'use "ring-a.circuit"\nstock line run {}\n',
  'bench/steering.circuit': `vehicle cart "a\u001b[31mred \u202egnp.exe <script>alert(1)</script> 🚗" {}\ntee t\u00e9 {}\n`,
  'bench/thousand.circuit': Array.from({ length: 1000 }, (_, n) => `tee tee-${n} { bore 3 bar }`).join('\n'),
  'secret.circuit': 'stock secret run {}\n',
});
const bench = join(folder, 'bench');
symlinkSync(join(folder, 'secret.circuit'), join(bench, 'link.circuit'));
symlinkSync(join(bench, 'round.circuit'), join(bench, 'round.circuit'));
// Whoever reads it never comes to an end.
symlinkSync('/dev/zero', join(bench, 'device.circuit'));

async function command(...args: readonly string[]) {
  const terminal = captured(bench);
  const code = await run(args, terminal);
  return { code, printed: terminal.printed(), complained: terminal.complained() };
}

describe('a file that cannot be used', () => {
  it.each([
    ['absent.circuit', 'There is no such file.'],
    ['drawer', 'This is a folder; name a circuit file in it.'],
    ['binary.circuit', 'This is not a text file, so it is not read as a circuit.'],
    ['latin-1.circuit', 'This is not text in UTF-8; save it as UTF-8.'],
    ['utf-16.circuit', 'This file is written in UTF-16; save it as UTF-8.'],
    ['device.circuit', 'This is no ordinary file.'],
    ['round.circuit', 'Its symbolic links lead in a circle.'],
    ['notes.txt', 'A circuit file has a name that ends in .circuit.'],
    [
      'five-megabytes.circuit',
      'This file has 5.0 MB; circuit files are read up to 4.0 MB. Split it and take the parts in with “use”.',
    ],
  ])('%s: every verb says why and ends with 2', async (file, reason) => {
    for (const verb of ['check', 'figures', 'draw']) {
      expect(await command(verb, file)).toEqual({ code: 2, printed: '', complained: `${file}: ${reason}\n` });
    }
  });
});

describe('a used file that cannot be had', () => {
  it.each([
    ['uses-outside', /outside/],
    ['uses-absolute', /not a relative path/],
    ['uses-folder', /is a folder/],
    ['uses-itself', /does not use itself/],
    ['uses-missing', /no file “gone\.circuit”/],
    ['uses-link', /outside/],
    ['uses-binary', /cannot be read/],
  ])('%s: is told at its path, and the rest is read', async (name, words) => {
    const { code, printed } = await command('check', `${name}.circuit`);
    expect(code).toBe(1);
    const [line] = printed.split('\n').filter((each) => each.includes('error use-failed'));
    expect(line).toMatch(new RegExp(`^${name}\\.circuit:1:5 error use-failed: `));
    expect(line).toMatch(words);
    expect(printed).toContain(`${name}.circuit: 1 error, no warnings`);
    const { code: figures, printed: table, complained } = await command('figures', `${name}.circuit`);
    expect(figures).toBe(1);
    expect(table).toContain('52 1/4 in');
    expect(complained).toContain('Only the rest of the file is shown; parts may be missing from it.');
  });

  it('may be one that uses the first in turn', async () => {
    expect((await command('check', 'ring-a.circuit')).printed).toContain('no errors, no warnings');
  });
});

describe('odd text', () => {
  it('of no length has nothing wrong with it and nothing in it', async () => {
    expect((await command('check', 'empty.circuit')).code).toBe(0);
    expect((await command('figures', 'empty.circuit')).code).toBe(0);
    const { code, complained } = await command('draw', 'empty.circuit');
    expect({ code, complained }).toEqual({
      code: 2,
      complained: 'empty.circuit: There is no part in it to draw.\n',
    });
  });

  it('does not steer the terminal', async () => {
    for (const verb of ['check', 'figures']) {
      const { printed } = await command(verb, 'steering.circuit');
      expect(printed).toContain('a<1b>[31mred <202e>gnp.exe <script>alert(1)</script> 🚗');
      expect(printed.replaceAll('\n', '')).not.toMatch(/\p{Cc}|\u202e/u);
    }
  });

  it('with a thousand errors has a thousand lines for them', async () => {
    const { code, printed } = await command('check', 'thousand.circuit');
    expect(code).toBe(1);
    for (const line of [1, 500, 1000])
      expect(printed).toMatch(new RegExp(`^thousand\\.circuit:${line}:\\d+ error `, 'm'));
  });

  it('never shows the inside of the program', async () => {
    for (const file of ['thousand', 'steering', 'ring-a', 'uses-link', 'empty']) {
      for (const { name } of verbs) {
        const { printed, complained } = await command(name, `${file}.circuit`);
        expect(printed + complained).not.toMatch(/^\s+at .*:\d+:\d+|mistake in linewright|\bundefined\b|\bNaN\b/m);
      }
    }
  });
});
