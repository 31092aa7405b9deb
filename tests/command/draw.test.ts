import { existsSync, readdirSync, readFileSync, symlinkSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { run } from '../../server/command/run.ts';
import { captured } from './captured.ts';
import { garage, soundCircuit } from './garage.ts';

const marked = `${soundCircuit}\nto-fit tee later {}\nto-remove tee before {}\n`;
const folder = garage({
  'cart.circuit': soundCircuit,
  'marked.circuit': marked,
  'broken.circuit': `${soundCircuit}\nrun {{{`,
  'kept.svg': 'a picture from before',
  'folder.svg/inside.txt': '',
});
const read = (name: string): string => readFileSync(join(folder, name), 'utf8');

async function draw(...args: readonly string[]) {
  const terminal = captured(folder);
  const code = await run(['draw', ...args], terminal);
  return { code, printed: terminal.printed(), complained: terminal.complained() };
}

describe('draw', () => {
  it('writes the picture beside the circuit and says where', async () => {
    const { code, printed } = await draw('cart.circuit');
    expect(code).toBe(0);
    expect(printed).toContain(`cart.circuit as planned → ${join(folder, 'cart.svg')}\n`);
    expect(read('cart.svg')).toMatch(/^<svg [\s\S]*data-id="slave"[\s\S]*<\/svg>\n$/);
  });

  it('writes the same bytes each time, in each theme its own', async () => {
    const themes = ['print', 'light', 'dark', 'high-contrast'];
    for (const theme of themes) {
      expect((await draw('cart.circuit', '--theme', theme, '-o', `${theme}-1.svg`)).code).toBe(0);
      await draw('cart.circuit', `--theme=${theme}`, `--out=${theme}-2.svg`);
      expect(read(`${theme}-1.svg`)).toBe(read(`${theme}-2.svg`));
    }
    expect(new Set(themes.map((theme) => read(`${theme}-1.svg`))).size).toBe(themes.length);
    expect(read('cart.svg')).toBe(read('print-1.svg'));
  });

  it('draws what is there as found or as planned', async () => {
    await draw('marked.circuit', '-o', 'planned.svg');
    await draw('marked.circuit', '-o', 'found.svg', '--as', 'found');
    expect(read('planned.svg')).toContain('data-id="later"');
    expect(read('planned.svg')).not.toContain('data-id="before"');
    expect(read('found.svg')).toContain('data-id="before"');
    expect(read('found.svg')).not.toContain('data-id="later"');
  });

  it('puts the new picture in the place of the old one, behind a link too, and leaves nothing beside it', async () => {
    writeFileSync(join(folder, 'behind.svg'), 'old');
    symlinkSync('behind.svg', join(folder, 'link.svg'));
    await draw('cart.circuit', '-o', 'kept.svg');
    await draw('cart.circuit', '-o', 'link.svg');
    expect(read('kept.svg')).toBe(read('cart.svg'));
    expect(read('behind.svg')).toBe(read('cart.svg'));
    expect(readdirSync(folder).filter((name) => name.endsWith('.part'))).toEqual([]);
  });

  it.each([
    ['nowhere/out.svg', 'nowhere/out.svg was not written: its folder does not exist.'],
    ['folder.svg', 'folder.svg was not written: it is a folder.'],
  ])('says why %s cannot be written', async (out, message) => {
    expect(await draw('cart.circuit', '-o', out)).toEqual({ code: 2, printed: '', complained: `${message}\n` });
  });

  it('does not write a picture over anything that is called otherwise', async () => {
    const { code, complained } = await draw('cart.circuit', '-o', 'cart.circuit');
    expect(code).toBe(2);
    expect(complained).toContain('give it a name that ends in .svg, not “cart.circuit”');
    expect(read('cart.circuit')).toBe(soundCircuit);
  });

  it('draws what is left of broken text, and says so', async () => {
    const { code, complained } = await draw('broken.circuit', '-o', 'rest.svg');
    expect(code).toBe(1);
    expect(complained).toMatch(/^broken\.circuit:\d+:\d+ error syntax: [\s\S]*Only the rest of the file is shown/);
    expect(existsSync(join(folder, 'rest.svg'))).toBe(true);
  });
});
