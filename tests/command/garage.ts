/** Folders with circuit files in them, on a real disk, for as long as a test file runs. */
import { mkdirSync, mkdtempSync, realpathSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { afterAll } from 'vitest';

/** Makes a new folder with these files; it goes when the tests of the file are done. */
export function garage(files: Readonly<Record<string, string | Uint8Array>>): string {
  const folder = realpathSync(mkdtempSync(join(tmpdir(), 'linewright-garage-')));
  afterAll(() => rmSync(folder, { recursive: true, force: true }));
  for (const [name, content] of Object.entries(files)) {
    const path = join(folder, name);
    mkdirSync(dirname(path), { recursive: true });
    writeFileSync(path, content);
  }
  return folder;
}

/** Nothing is wrong with it, and something is to be measured. */
export const soundCircuit = `vehicle cart "Hand cart" {}

clutch-pedal clutch {
  ratio 5
  pushes main
}

master main single {
  bore 3/4 in
  stroke 1 in
  port out: 3/8-24 inverted-flare
  reservoir { capacity ? }
}

run line {
  from main
  to slave
  tube 3/16 in wall 0.028 in copper-nickel
  nut 3/8-24
  flare double-45
  length 52 in ± 1/2 in
}

clutch-slave slave {
  bore 7/8 in
  stroke 20 mm
  port feed: 3/8-24 inverted-flare
  bleeder {}
}
`;

/** The run begins nowhere: an error. */
export const brokenJoint = soundCircuit.replace('from main\n', 'from mian\n');

/** A nut that strips the thread of the port. */
export const wrongNut = soundCircuit.replace('nut 3/8-24', 'nut M10x1');
