/** The surveyed van of the examples: what is wrong with it, what its lines come to, and its two circuits. */
import { copyFileSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { afterAll, afterEach, beforeAll, expect, inject, test } from 'vitest';
import { type Session, startSession } from './support/session.ts';

const examples = path.resolve(import.meta.dirname, '../../examples');
const van = readFileSync(path.join(examples, 'orchard-van/orchard-van.circuit'), 'utf8');
const lineOf = (text: string) => van.split('\n').findIndex((line) => line.startsWith(text)) + 1;
const picture = (name: string) => path.join(inject('pictures'), name);

let session: Session;
beforeAll(async () => {
  session = await startSession({
    folders: [examples],
    userSettings: { 'workbench.colorTheme': 'Default Light Modern' },
  });
});
afterAll(() => session.stop());
afterEach(async ({ task }) => {
  if (task.result?.state === 'fail') await session.leaveTrace(task.name);
});

const part = (id: string) => session.window.preview().locator(`#stage [data-id="${id}"][tabindex]`);

test('its findings are in the Problems view and underlined in the text', async () => {
  const { window } = session;
  await window.quickOpen('orchard-van/orchard-van.circuit');
  await window.goTo(lineOf('to-fit run front-feed'));
  await window.page.locator('.squiggly-error').first().waitFor();
  await window.page.keyboard.press('Control+Shift+M');
  await window.problems().first().waitFor();
  const rows = window.problems();
  await rows.filter({ hasText: 'thread-mismatch' }).first().waitFor();
  const text = (await rows.allTextContents()).join('\n');
  expect(text).toContain('orchard-van.circuit');
  expect(text).toContain('The nut of front-feed');
  await window.page.screenshot({ path: picture('problems.png') });
});

test('the code of a finding leads to the page on its rule', async () => {
  const { window } = session;
  await window.problems().locator('a', { hasText: 'thread-mismatch' }).first().click();
  await window.page.locator('.tab.active', { hasText: 'Preview thread-mismatch.md' }).waitFor();
  await window.preview().getByRole('heading', { name: 'thread-mismatch' }).waitFor();
  await window.page.screenshot({ path: picture('rule-page.png') });
  await window.command('View: Close Editor');
  await window.page.keyboard.press('Control+J');
});

test('hovering over a run shows its figures and how they came about', async () => {
  const { window } = session;
  await window.quickOpen('orchard-van/orchard-van.circuit');
  await window.goTo(lineOf('to-fit run front-feed'), 14);
  await window.command('Show or Focus Hover');
  const hover = window.page.locator('.monaco-hover:visible');
  await expect.poll(async () => (await hover.allTextContents()).join()).toMatch(/cut length/i);
  const text = (await hover.allTextContents()).join();
  expect(text).toMatch(/volume/i);
  expect(text).toMatch(/\d+(\.\d+)?( \d+\/\d+)?\s(mm|m|in|ft)\b/);
  await window.page.screenshot({ path: picture('hover.png') });
  await window.page.keyboard.press('Escape');
});

test('its two circuits are drawn as planned and as found', async () => {
  const { window } = session;
  await window.command('Linewright: Show Schematic to the Side');
  await part('main').waitFor();
  await window.page.screenshot({ path: picture('van-planned.png') });
  await window.preview().getByRole('button', { name: 'As found' }).click();
  await part('old-master').waitFor();
  await part('main').waitFor({ state: 'detached' });
  await window.page.screenshot({ path: picture('van-found.png') });
  await window.command('Linewright: Show Circuit as Planned');
  await part('main').waitFor();
});

/** `UPDATE=1` makes it the picture that the README shows. */
test('text, findings and schematic stand side by side', async () => {
  const { window } = session;
  await window.page.setViewportSize({ width: 1500, height: 1080 });
  await window.focusEditor('orchard-van.circuit');
  await window.page.keyboard.press('Control+B');
  await window.page.keyboard.press('Control+Shift+M');
  await window.problems().first().waitFor();
  await window.goTo(lineOf('to-fit run front-feed'), 14);
  await part('main').waitFor();
  await window.page.screenshot({ path: picture('side-by-side.png') });
  if (process.env['UPDATE'] === '1') {
    copyFileSync(picture('side-by-side.png'), path.resolve(examples, '../extension/media/preview.png'));
  }
  await window.page.keyboard.press('Control+J');
  await window.page.keyboard.press('Control+B');
});

test('the schematic follows the circuit that is being edited', async () => {
  const { window } = session;
  await window.focusEditor('orchard-van.circuit');
  await window.quickOpen('hydraulic-clutch/clutch.circuit');
  await window.page.locator('.tab', { hasText: 'Schematic: clutch.circuit' }).waitFor();
  await part('main').waitFor({ state: 'detached' });
  await window.quickOpen('orchard-van/orchard-van.circuit');
  await part('main').waitFor();
});

test('a schematic that was hidden comes back as it was', async () => {
  const { window } = session;
  await window.preview().getByRole('button', { name: 'Zoom in' }).click();
  const zoomed = await window.preview().locator('#stage > .viewport').getAttribute('transform');
  await window.focusEditor('orchard-van.circuit');
  await window.command('View: Toggle Maximize Editor Group');
  await part('main').waitFor({ state: 'hidden' });
  await window.command('View: Toggle Maximize Editor Group');
  await part('main').waitFor();
  await expect.poll(() => window.preview().locator('#stage > .viewport').getAttribute('transform')).toBe(zoomed);
});

test('the language server can be started anew', async () => {
  const { window } = session;
  await window.command('Linewright: Restart Language Server');
  await window.focusEditor('orchard-van.circuit');
  await window.quickOpen('hydraulic-clutch/clutch.circuit');
  await part('main').waitFor({ state: 'detached' });
  await part('clutch-master').waitFor();
});

test('nothing outside the machine was asked for', async () => {
  expect(await session.window.outsideRequests()).toEqual([]);
});
