/** The same in a browser alone: the extension and its language server run in workers, and files are read through the window. */
import path from 'node:path';
import { expect, inject, test } from 'vitest';
import { splitInTwo } from './support/circuits.ts';
import { withWindow } from './support/session.ts';

const files = splitInTwo();
const carLines = (files['car.circuit'] ?? '').split('\n');

test('findings, hover and schematic without a process anywhere', async () => {
  await withWindow({ host: 'web', files }, async ({ window }) => {
    const { page } = window;
    await window.openFile('car.circuit');
    await window.command('Linewright: Show Schematic to the Side');
    const part = (id: string) => window.preview().locator(`#stage [data-id="${id}"][tabindex]`);
    await part('front-tee').waitFor({ timeout: 60_000 });

    // The stock is in the other file: the picture has the tube's size from there.
    await expect.poll(() => part('main-to-front-tee').textContent()).toContain('3/16 in');

    await window.focusEditor('car.circuit');
    await window.goTo(carLines.findIndex((line) => line.startsWith('run main-to-front-tee')) + 1, 8);
    await window.command('Show or Focus Hover');
    const hover = page.locator('.monaco-hover:visible');
    await expect.poll(async () => (await hover.allTextContents()).join()).toMatch(/cut length/i);
    await page.keyboard.press('Escape');

    await window.focusEditor('car.circuit');
    await window.goTo(1);
    await page.keyboard.type('run nowhere of line { from front-tee.lft }\n');
    await page.locator('.squiggly-error').first().waitFor();
    await page.screenshot({ path: path.join(inject('pictures'), 'web.png') });
    expect(await window.outsideRequests()).toEqual([]);
  });
});
