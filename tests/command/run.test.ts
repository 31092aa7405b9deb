import { describe, expect, it } from 'vitest';
import { run, verbs } from '../../server/command/run.ts';
import { captured } from './captured.ts';
import { garage } from './garage.ts';

const folder = garage({});

async function command(...args: readonly string[]) {
  const terminal = captured(folder);
  const code = await run(args, terminal);
  return { code, printed: terminal.printed(), complained: terminal.complained() };
}

describe('help', () => {
  it('lists every verb with what it does, and a caution', async () => {
    for (const way of [['--help'], ['-h'], ['help']]) {
      const { code, printed, complained } = await command(...way);
      expect({ code, complained }).toEqual({ code: 0, complained: '' });
      for (const { name, summary } of verbs) expect(printed).toMatch(new RegExp(`linewright ${name} +${summary}`));
      expect(printed).toContain('Brakes can kill.');
    }
  });

  it.each(verbs.map(({ name }) => name))('on %s is had in three ways and names the exit codes', async (name) => {
    const said = await command(name, '--help');
    expect(said.code).toBe(0);
    expect(said.printed).toMatch(new RegExp(`^linewright ${name} `));
    expect(await command('help', name)).toEqual(said);
    expect(await command(name, 'van.circuit', '-h')).toEqual(said);
  });

  it('names every option that the verb takes, and no other', async () => {
    for (const { name, help } of verbs) {
      const told = new Set(help.match(/(?<=[ [])--[a-z-]+/g));
      const { complained } = await command(name, '--no-such-option');
      const taken = new Set(complained.match(/--[a-z-]+/g));
      for (const shared of ['--no-such-option', '--help']) taken.delete(shared);
      for (const option of told) expect((await command(name, option)).complained).not.toContain('There is no option');
      for (const option of taken) expect(told, `${name}: ${option}`).toContain(option);
    }
  });

  it('fits a terminal of 120 columns', () => {
    for (const { help } of verbs) for (const line of help.split('\n')) expect(line.length).toBeLessThanOrEqual(120);
  });
});

describe('a command line that is not understood', () => {
  it('is answered with what there is', async () => {
    const { code, printed, complained } = await command('chekc', 'van.circuit');
    expect({ code, printed }).toEqual({ code: 2, printed: '' });
    expect(complained).toContain('linewright has no verb “chekc”. There are check, figures, draw,');
    expect((await command('help', 'chekc')).complained).toBe(complained);
  });

  it('is answered with help if it is empty', async () => {
    const { code, complained } = await command();
    expect(code).toBe(2);
    expect(complained).toBe((await command('--help')).printed);
  });

  it('steers no terminal by what it repeats', async () => {
    for (const args of [['\u001b[2Jx'], ['check', '--\u001b[2Jx'], ['check', '--as', '\u001b[2J', 'x.circuit']]) {
      expect((await command(...args)).complained).not.toContain('\u001b');
    }
  });
});
