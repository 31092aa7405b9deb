import { spawn, spawnSync } from 'node:child_process';
import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type BuiltProject, buildProject } from '../support/built.ts';
import { brokenJoint, garage, soundCircuit } from './garage.ts';

let project: BuiltProject;
const folder = garage({ 'sound.circuit': soundCircuit, 'broken.circuit': brokenJoint, 'locked.circuit': soundCircuit });

beforeAll(() => {
  project = buildProject();
});

afterAll(() => project.remove());

function linewright(...args: readonly string[]) {
  const { status, stdout, stderr } = spawnSync(
    process.execPath,
    [join(project.folder, 'dist', 'linewright.cjs'), ...args],
    { cwd: folder, encoding: 'utf8', timeout: 60_000 },
  );
  return { status, stdout, stderr };
}

describe('the command as it ships', () => {
  it('ends with 0, 1 or 2', () => {
    expect(linewright('check', 'sound.circuit').status).toBe(0);
    expect(linewright('check', 'broken.circuit').status).toBe(1);
    expect(linewright('check', 'absent.circuit').status).toBe(2);
    expect(linewright('chekc').status).toBe(2);
    expect(linewright().status).toBe(2);
  });

  it('puts findings on its output and complaints beside it, in no colour through a pipe', () => {
    const { stdout, stderr } = linewright('check', 'broken.circuit', 'absent.circuit');
    expect(stdout).toContain('broken.circuit:16:8 error unknown-name: ');
    expect(stderr).toBe('absent.circuit: There is no such file.\n');
    expect(stdout + stderr).not.toContain('\u001b');
  });

  it('says its version and its verbs', () => {
    const { version }: { version: string } = JSON.parse(readFileSync(join(project.folder, 'package.json'), 'utf8'));
    expect(linewright('--version')).toEqual({ status: 0, stdout: `linewright ${version}\n`, stderr: '' });
    const help = linewright('--help').stdout;
    for (const verb of ['check', 'figures', 'draw', 'demo'])
      expect(help).toMatch(new RegExp(`^ +linewright ${verb} `, 'm'));
  });

  it('draws, and is done when it has drawn', () => {
    const { status, stdout } = linewright('draw', 'sound.circuit', '-o', 'sound.svg');
    expect(status).toBe(0);
    expect(stdout).toMatch(/^sound\.circuit as planned → sound\.svg\n/);
    expect(readFileSync(join(folder, 'sound.svg'), 'utf8')).toMatch(/^<svg [\s\S]*<\/svg>\n$/);
  });

  it('shows the example from any folder', () => {
    const { status, stdout, stderr } = linewright('demo', '-o', 'shown');
    expect({ status, stderr }).toEqual({ status: 0, stderr: '' });
    expect(stdout).toContain('Orchard delivery van, as found');
    expect(stdout).toContain('Orchard delivery van, as planned');
    expect(stdout).toMatch(/rear-line +cut length +\d/);
    for (const state of ['found', 'planned']) {
      const path = join(folder, 'shown', `orchard-van-as-${state}.svg`);
      expect(stdout).toContain(`Schematic as ${state}: ${path}`);
      expect(existsSync(path)).toBe(true);
    }
  });

  it('does not mind a reader that has seen enough', async () => {
    const child = spawn(process.execPath, [
      join(project.folder, 'dist', 'linewright.cjs'),
      'figures',
      join(project.folder, 'examples', 'orchard-van', 'orchard-van.circuit'),
      '--format',
      'json',
    ]);
    let complaints = '';
    child.stderr.on('data', (text) => {
      complaints += text;
    });
    child.stdout.destroy();
    const code = await new Promise((resolve) => child.once('close', resolve));
    expect(complaints).not.toMatch(/EPIPE| at /);
    expect(code).not.toBeNull();
  });
});
