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

const themes = ['Default Light Modern', 'Default Dark Modern', 'Default High Contrast', 'Default High Contrast Light'];

test('the schematic takes the colours of the theme, live', async () => {
  await withWindow({ files: { 'car.circuit': smallCar } }, async ({ window, folder }) => {
    await window.openFile('car.circuit');
    await window.command('Linewright: Show Schematic to the Side');
    const ground = window.preview().locator('#stage .lw-paper');
    const ink = window.preview().locator('#stage .lw-title').first();
    await ground.waitFor();
    mkdirSync(path.join(folder, '.vscode'));
    const seen = new Map<string, string>();
    for (const theme of themes) {
      const before = await window.preview().locator('body').getAttribute('data-vscode-theme-id');
      writeFileSync(path.join(folder, '.vscode/settings.json'), JSON.stringify({ 'workbench.colorTheme': theme }));
      if (before !== theme) {
        await expect
          .poll(() => window.preview().locator('body').getAttribute('data-vscode-theme-id'), { timeout: 15_000 })
          .toBe(theme);
      }
      const fill = await ground.evaluate((element) => getComputedStyle(element).fill);
      expect(await ink.evaluate((element) => getComputedStyle(element).fill), theme).not.toBe(fill);
      seen.set(theme, fill);
      const name = theme.replace('Default ', '').replaceAll(' ', '-').toLowerCase();
      await window.page.screenshot({ path: path.join(inject('pictures'), `window-${name}.png`) });
    }
    expect(seen.get('Default Light Modern')).not.toBe(seen.get('Default Dark Modern'));
  });
});
