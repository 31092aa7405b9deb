/** Documents that are not yet files, and the looks of the whole window in each kind of theme. */
import { mkdirSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { expect, inject, test } from 'vitest';
import { smallCar } from './support/circuits.ts';
import { withWindow } from './support/session.ts';

test('the example opens as an untitled copy that is checked and drawn like a file', async () => {
  await withWindow({}, async ({ window }) => {
    const part = (id: string) => window.preview().locator(`#stage [data-id="${id}"][tabindex]`);
    await window.command('Linewright: Open an Example');
    await window.page.locator('.monaco-editor.focused').first().waitFor();
    await window.command('Linewright: Show Schematic to the Side');
    await part('front-tee').waitFor();
    await part('rear-tee').click({ force: true });
    const line = smallCar.split('\n').findIndex((text) => text.startsWith('tee rear-tee')) + 1;
    await expect.poll(() => window.cursorLine()).toBe(line);
    expect(await window.outsideRequests()).toEqual([]);
  });
});

const themes = [
  ['Default Light Modern', 'vscode-light'],
  ['Default Dark Modern', 'vscode-dark'],
  ['Default High Contrast', 'vscode-high-contrast'],
  ['Default High Contrast Light', 'vscode-high-contrast-light'],
] as const;

test('the schematic takes the colours of the theme, live', async () => {
  await withWindow({ files: { 'car.circuit': smallCar } }, async ({ window, folder }) => {
    await window.openFile('car.circuit');
    await window.command('Linewright: Show Schematic to the Side');
    const ground = window.preview().locator('#stage .lw-paper');
    const ink = window.preview().locator('#stage .lw-title').first();
    await ground.waitFor();
    mkdirSync(path.join(folder, '.vscode'));
    const seen = new Map<string, string>();
    for (const [theme, kind] of themes) {
      writeFileSync(path.join(folder, '.vscode/settings.json'), JSON.stringify({ 'workbench.colorTheme': theme }));
      await window.preview().locator(`body[data-vscode-theme-kind="${kind}"]`).waitFor();
      const fill = await ground.evaluate((element) => getComputedStyle(element).fill);
      expect(await ink.evaluate((element) => getComputedStyle(element).fill), theme).not.toBe(fill);
      seen.set(kind, fill);
      await window.page.screenshot({ path: path.join(inject('pictures'), `window-${kind}.png`) });
    }
    expect(seen.get('vscode-light')).not.toBe(seen.get('vscode-dark'));
  });
});
