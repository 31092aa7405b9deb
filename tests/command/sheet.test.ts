import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { run } from '../../server/command/run.ts';
import { captured } from './captured.ts';
import { garage, soundCircuit } from './garage.ts';

const toMake = soundCircuit.replace('run line', 'to-fit run line');
const folder = garage({
  'cart.circuit': toMake,
  'broken.circuit': `${toMake}\nto-fit run {{{`,
  'odd.circuit': toMake.replace('length 52 in ± 1/2 in', 'length 52 psi'),
});

async function sheet(...args: readonly string[]) {
  const terminal = captured(folder);
  const code = await run(['sheet', ...args], terminal);
  return { code, printed: terminal.printed(), complained: terminal.complained() };
}

describe('sheet lines', () => {
  it('prints the lines to make, for reading at the terminal', async () => {
    const { code, printed, complained } = await sheet('lines', 'cart.circuit');
    expect([code, complained]).toEqual([0, '']);
    expect(printed).toMatch(/^Lines to make\n=+\nHand cart, as planned\n/);
    // 52 1/2 in at its long limit and twice 3 mm: 52.736 in.
    expect(printed).toContain('1. Cut 52 3/4 in, square');
  });

  it('leaves out as found what is only planned', async () => {
    expect((await sheet('lines', 'cart.circuit', '--as', 'found')).printed).toContain('The file has no runs of tube.');
  });

  it('takes the length in which tube is sold', async () => {
    const { printed } = await sheet('lines', 'cart.circuit', '--stock-length', '6 ft');
    expect(printed).toContain('1 × 6 ft of this tube is needed');
    const json = await sheet('lines', 'cart.circuit', '--stock-length=20ft 6in', '--format', 'json');
    expect(JSON.parse(json.printed).data.stockLengthMetres).toBeCloseTo(246 * 0.0254, 9);
  });

  it.each(['', 'six feet', '20', '-3 ft', '0 m', '1e9 m', '20 psi', '5 m m'])(
    'refuses “%s” as such a length',
    async (text) => {
      const { code, printed, complained } = await sheet('lines', 'cart.circuit', `--stock-length=${text}`);
      expect([code, printed]).toEqual([2, '']);
      expect(complained).toMatch(/--stock-length takes/);
    },
  );
});

describe('every sheet', () => {
  it.each(['lines', 'parts', 'measure'])('%s comes in every format', async (name) => {
    const starts = { text: /^\S.*\n=/, markdown: /^# /, html: /^<!doctype html>/, json: /^\{/, csv: /^[a-z][^\n]*,/ };
    for (const [format, start] of Object.entries(starts)) {
      const { code, printed } = await sheet(name, 'cart.circuit', '--format', format);
      expect(code).toBe(0);
      expect(printed).toMatch(start);
    }
  });

  it('goes into a file, whose ending says its format', async () => {
    for (const [ending, start] of Object.entries({
      html: '<!doctype html>',
      csv: 'line,',
      md: '# ',
      json: '{',
      txt: 'Lines',
    })) {
      const { code, printed } = await sheet('lines', 'cart.circuit', '-o', `lines.${ending}`);
      expect(code).toBe(0);
      expect(printed).toContain(`cart.circuit as planned → lines.${ending}\n`);
      expect(readFileSync(join(folder, `lines.${ending}`), 'utf8').startsWith(start)).toBe(true);
    }
    await sheet('lines', 'cart.circuit', '-o', 'page.txt', '--format', 'html');
    expect(readFileSync(join(folder, 'page.txt'), 'utf8')).toMatch(/^<!doctype html>/);
  });

  it('is the same bytes each time', async () => {
    const once = await sheet('lines', 'cart.circuit', '--format', 'html');
    expect(await sheet('lines', 'cart.circuit', '--format', 'html')).toEqual(once);
  });

  it('of a broken file prints what is known, says on it what is not, and ends with 1', async () => {
    const { code, printed, complained } = await sheet('lines', 'broken.circuit');
    expect(code).toBe(1);
    expect(printed).toMatch(/Part of the file could not be read\n[\s\S]*- broken\.circuit:\d+:\d+ /);
    expect(printed).toContain('Cut 52 3/4 in');
    expect(complained).toContain('Only the rest of the file is shown');
  });

  it('says on it what the text of the file gets wrong', async () => {
    const { printed } = await sheet('lines', 'odd.circuit');
    expect(printed).toMatch(/- odd\.circuit:\d+:\d+ .*pressure/);
    expect(printed).toContain('Do not cut yet');
  });

  it.each([
    [[], /Name a sheet/],
    [['lines'], /Name one circuit file/],
    [['pictures', 'cart.circuit'], /Name a sheet \(lines, parts, measure\)/],
    [['lines', 'cart.circuit', 'odd.circuit'], /Name one circuit file/],
    [['lines', 'cart.circuit', '--format', 'pdf'], /--format takes text, markdown, html, json or csv/],
    [['lines', 'cart.circuit', '--as', 'drawn'], /--as takes planned or found/],
    [['lines', 'cart.circuit', '--colour'], /no option --colour/],
    [['lines', 'missing.circuit'], /There is no such file/],
    [['lines', 'cart.circuit', '-o', 'nowhere/lines.html'], /was not written: its folder does not exist/],
  ])('%j is refused in a sentence', async (args, sentence) => {
    const { code, printed, complained } = await sheet(...args);
    expect([code, printed]).toEqual([2, '']);
    expect(complained).toMatch(sentence);
    expect(existsSync(join(folder, 'nowhere'))).toBe(false);
  });
});
