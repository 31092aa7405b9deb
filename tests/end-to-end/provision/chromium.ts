/** Finds the Chromium that the tests drive, or installs the distribution's own where that is allowed. */
import { accessSync, constants } from 'node:fs';
import path from 'node:path';
import { run } from '../support/process.ts';

const names = ['chromium', 'chromium-browser', 'google-chrome', 'google-chrome-stable'];

const advice =
  'The end-to-end tests need Chromium or Chrome. Install one (Debian, Ubuntu: apt-get install chromium), ' +
  'or set CHROMIUM to the path of its program, and run them again.';

/** The path of a browser program; throws a plain sentence saying what to install if there is none. */
export async function findChromium(): Promise<string> {
  const asked = process.env['CHROMIUM'];
  if (asked !== undefined && asked !== '') {
    if (isProgram(asked)) return asked;
    throw new Error(`CHROMIUM names ${asked}, which is not a program that can be run. ${advice}`);
  }
  const present = onPath();
  if (present !== undefined) return present;
  if (process.getuid?.() !== 0 || !isProgram('/usr/bin/apt-get')) throw new Error(advice);
  const env = { ...process.env, DEBIAN_FRONTEND: 'noninteractive' };
  try {
    await run({ command: 'apt-get', args: ['update'], env });
    await run({ command: 'apt-get', args: ['install', '-y', '--no-install-recommends', 'chromium'], env });
  } catch (error) {
    throw new Error(advice, { cause: error });
  }
  const installed = onPath();
  if (installed === undefined) throw new Error(advice);
  return installed;
}

function onPath(): string | undefined {
  const folders = (process.env['PATH'] ?? '').split(path.delimiter).filter((folder) => folder !== '');
  return names.flatMap((name) => folders.map((folder) => path.join(folder, name))).find(isProgram);
}

function isProgram(file: string): boolean {
  try {
    accessSync(file, constants.X_OK);
    return true;
  } catch {
    return false;
  }
}
