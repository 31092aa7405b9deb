/** The sheets of the surveyed van beside its text: opened from the line over the file, followed, saved, printed, restored. */
import { existsSync, readFileSync } from 'node:fs';
import path from 'node:path';
import axe, { type AxeResults } from 'axe-core';
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

const lens = (title: string) => session.window.page.locator('.codelens-decoration a', { hasText: title });
const sheet = () => session.window.preview().locator('#sheet');
const section = (title: string) =>
  sheet()
    .locator('section', { has: session.window.page.locator('h3', { hasText: title }) })
    .last();
const scrollTop = () =>
  session.window
    .preview()
    .locator('#paper')
    .evaluate((paper) => Math.round(paper.scrollTop));
const saved = (name: string) => path.join(session.folder, 'orchard-van', name);
const textOf = (file: string) => (existsSync(file) ? readFileSync(file, 'utf8') : '');

test('the line over the file counts what is on its sheets, and opens the lines to make beside the text', async () => {
  const { window } = session;
  await window.quickOpen('orchard-van/orchard-van.circuit');
  await lens('Lines to make (5)').waitFor({ timeout: 60_000 });
  for (const title of ['Parts to buy (', 'To measure (', 'Schematic']) await lens(title).waitFor();
  await lens('Lines to make (5)').click();
  await window.page.locator('.tab.active', { hasText: 'Lines to make: orchard-van.circuit' }).waitFor();
  await window.preview().getByRole('heading', { name: 'Lines to make', level: 1 }).waitFor();
  // 3 in + 4 1/2 in straight, a quarter turn about 1 in, and two double flares: 9.307 in, up to the next 1/32 in.
  await expect.poll(() => section('rear-feed').textContent()).toContain('cut to6 25/32 in');
  await expect.poll(() => section('front-feed').textContent()).toContain('cut to9 5/16 in');
  await window.page.screenshot({ path: picture('lines-sheet.png') });
});

test('the length to cut stands behind the name of the run in the text', async () => {
  const { window } = session;
  await window.focusEditor('orchard-van.circuit');
  await window.goTo(lineOf('to-fit run front-feed'));
  const line = window.page.locator('.view-line', { hasText: 'run front-feed' });
  await expect
    .poll(async () => (await line.first().textContent())?.replaceAll('\u00a0', ' '))
    .toContain('cut 9 5/16 in');
});

test('the sheet is in the colours of the theme and bears a look by a screen reader', async () => {
  const { window } = session;
  const frame = await window.page
    .locator('iframe.webview.ready')
    .elementHandle()
    .then((handle) => handle?.contentFrame())
    .then((outer) => outer?.childFrames()[0]);
  if (frame === undefined) throw new Error('The sheet has no frame.');
  const [paper, editor] = await frame.evaluate(() => [
    getComputedStyle(document.body).backgroundColor,
    getComputedStyle(document.documentElement).getPropertyValue('--vscode-editor-background'),
  ]);
  expect(paper).toBe('rgb(255, 255, 255)');
  expect(editor).toMatch(/^#ffffff$/i);
  await frame.evaluate(axe.source);
  const result: AxeResults = await frame.evaluate(() =>
    Reflect.get(globalThis, 'axe').run({ runOnly: ['wcag2a', 'wcag2aa', 'wcag21aa', 'wcag22aa'] }),
  );
  expect(result.violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.html}`)).toEqual([]);
});

test('it follows the text and stays where it was being read', async () => {
  const { window } = session;
  await section('rear-feed').scrollIntoViewIfNeeded();
  await expect.poll(scrollTop).toBeGreaterThan(200);
  const before = await scrollTop();
  await window.focusEditor('orchard-van.circuit');
  await window.goTo(lineOf('to-fit run front-feed') + 3, '  route straight '.length + 1);
  await window.page.keyboard.type('1');
  await expect.poll(() => section('front-feed').textContent()).toContain('cut to19 5/16 in');
  expect(Math.abs((await scrollTop()) - before)).toBeLessThan(40);
  await window.command('File: Revert File');
  await expect.poll(() => section('front-feed').textContent()).toContain('cut to9 5/16 in');
});

test('it is saved in the format of its name, beside the circuit file', async () => {
  const { window } = session;
  await window.preview().getByRole('button', { name: 'Save as…' }).click();
  await window.acceptSaveDialog('orchard-van-lines.html');
  await expect.poll(() => textOf(saved('orchard-van-lines.html'))).toContain('</html>');
  const page = textOf(saved('orchard-van-lines.html'));
  expect(page).toMatch(/^<!doctype html>/);
  expect(page).toContain('9 5/16 in');
  expect(page).toContain('@media print');
  expect(page).not.toContain('<script');
});

test('where the editor is in a browser itself, printing saves the page', async () => {
  const { window } = session;
  await window.preview().getByRole('button', { name: 'As found' }).click();
  await expect.poll(() => sheet().textContent()).toContain('as found');
  await window.preview().getByRole('button', { name: 'Print…' }).click();
  await window.page.getByText('it prints from the browser that you open it in').first().waitFor();
  await window.acceptSaveDialog('orchard-van-lines-as-found.html');
  await expect.poll(() => textOf(saved('orchard-van-lines-as-found.html'))).toContain('as found');
});

test('by keyboard: the paper scrolls, Tab goes to the buttons, Escape to the text', async () => {
  const { window } = session;
  await window.preview().locator('#paper').focus();
  await window.page.keyboard.press('Home');
  await expect.poll(scrollTop).toBe(0);
  await window.page.keyboard.press('PageDown');
  await expect.poll(scrollTop).toBeGreaterThan(100);
  await window.page.keyboard.press('Shift+Tab');
  expect(await window.preview().locator(':focus').textContent()).toBe('Save as…');
  await window.page.keyboard.press('Escape');
  await expect.poll(() => window.page.locator('.monaco-editor.focused').count()).toBe(1);
});

test('after a reload of the window the same sheet is there again, as far down as it was', async () => {
  const { window } = session;
  await window.preview().locator('#paper').focus();
  await window.page.keyboard.press('PageDown');
  await expect.poll(scrollTop).toBeGreaterThan(200);
  // The paper glides to its place, and the place is remembered once it rests.
  await new Promise((resolve) => setTimeout(resolve, 500));
  const before = await scrollTop();
  await window.reload();
  await window.preview().getByRole('heading', { name: 'Lines to make', level: 1 }).waitFor();
  await expect.poll(() => sheet().textContent()).toContain('as found');
  await expect.poll(async () => Math.abs((await scrollTop()) - before)).toBeLessThan(40);
});

test('the other sheets are chosen from the command', async () => {
  const { window } = session;
  await window.focusEditor('orchard-van.circuit');
  await window.command('View: Close Other Editors in Group');
  await window.command('View: Close Editors in Other Groups');
  for (const [choice, words] of [
    ['Parts to buy', 'how many'],
    ['Things to measure', 'how to find it out'],
  ] as const) {
    await window.focusEditor('orchard-van.circuit');
    await window.command('Linewright: Show Sheet…');
    await window.page.locator('.quick-input-list .monaco-list-row', { hasText: choice }).first().click();
    await window.page.locator('.tab.active', { hasText: `${choice}: orchard-van.circuit` }).waitFor();
    await expect.poll(() => sheet().textContent()).toContain(words);
    await window.page.screenshot({ path: picture(`${choice.replaceAll(' ', '-').toLowerCase()}.png`) });
    await window.focusEditor('orchard-van.circuit');
    await window.command('View: Close Editors in Other Groups');
  }
});

test('nothing outside the machine was asked for', async () => {
  expect(await session.window.outsideRequests()).toEqual([]);
});
