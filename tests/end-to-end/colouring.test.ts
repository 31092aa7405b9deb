/** What works before the language server has said a word: language, colours, icon, commands. */
import { expect, inject, test } from 'vitest';
import { withWindow } from './support/session.ts';

test('a circuit file is known by its ending and coloured', async () => {
  await withWindow({ files: { 'van.circuit': 'pedal {\n  ratio 6.2 // at the pad\n}\n' } }, async ({ window }) => {
    await window.openFile('van.circuit');
    expect(await window.page.locator('#status\\.editor\\.mode').textContent()).toBe('Vehicle Hydraulic Circuit');
    const comment = window.page.locator('.view-line span span', { hasText: 'at the pad' });
    const keyword = window.page.locator('.view-line span span', { hasText: 'pedal' });
    const colour = (text: typeof comment) => text.evaluate((element) => getComputedStyle(element).color);
    expect(await colour(comment)).not.toBe(await colour(keyword));
    await window.page.screenshot({ path: `${inject('pictures')}/colouring.png` });
    expect(await window.outsideRequests()).toEqual([]);
  });
});
