/** A person edits a circuit with the schematic beside the text. */
import { readFileSync } from 'node:fs';
import path from 'node:path';
import { afterAll, afterEach, beforeAll, expect, inject, test } from 'vitest';
import { smallCar } from './support/circuits.ts';
import { type Session, startSession } from './support/session.ts';

let session: Session;
beforeAll(async () => {
  session = await startSession({ files: { 'car.circuit': smallCar } });
});
afterAll(() => session.stop());
afterEach(async ({ task }) => {
  if (task.result?.state === 'fail') await session.leaveTrace(task.name);
});

const lineOf = (text: string) => smallCar.split('\n').findIndex((line) => line.includes(text)) + 1;

const part = (id: string) => session.window.preview().locator(`#stage [data-id="${id}"][tabindex]`);

test('it opens and all parts are drawn', async () => {
  await session.window.openFile('car.circuit');
  await session.window.command('Linewright: Show Schematic to the Side');
  await part('front-tee').waitFor();
  for (const id of ['main', 'front-tee', 'rear-tee', 'front-left', 'front-right', 'rear-left', 'rear-right']) {
    expect(await part(id).count(), id).toBe(1);
  }
  expect(await session.window.page.locator('.tab.active', { hasText: 'Schematic: car.circuit' }).count()).toBe(1);
  await session.window.page.screenshot({ path: path.join(inject('pictures'), 'preview.png') });
});

test('the picture follows what is typed', async () => {
  const { window } = session;
  await window.focusEditor('car.circuit');
  await window.goTo(lineOf('// ---- Rear ----'), 1);
  await window.page.keyboard.type('plug spare-plug on body { port thread: 3/8-24 male inverted-flare }\n');
  await part('spare-plug').waitFor();
  await window.command('File: Revert File');
  await part('spare-plug').waitFor({ state: 'detached' });
});

test('a click on a part lands on its line', async () => {
  const { window } = session;
  await part('rear-tee').click({ force: true });
  await expect.poll(() => window.cursorLine()).toBe(lineOf('tee rear-tee on'));
  expect(await part('rear-tee').getAttribute('class')).toContain('lw-selected');
});

test('the part at the cursor is marked, and the cursor stays where it is', async () => {
  const { window } = session;
  await window.focusEditor('car.circuit');
  await window.goTo(lineOf('drum-brake rear-left on'), 3);
  await window.page.keyboard.press('ArrowRight');
  await expect.poll(() => part('rear-left').getAttribute('class')).toContain('lw-selected');
  expect(await window.cursorLine()).toBe(lineOf('drum-brake rear-left on'));
});

test('broken text keeps the last good picture and says so; mended text clears it', async () => {
  const { window } = session;
  await window.focusEditor('car.circuit');
  const line = lineOf('  ratio 5');
  await window.goTo(line, 1);
  await window.page.keyboard.type('}} "');
  const notice = window.preview().locator('#notice');
  await notice.waitFor();
  expect(await notice.textContent()).toContain('from before the error on line');
  expect(await part('front-tee').count()).toBe(1);
  await window.page.screenshot({ path: path.join(inject('pictures'), 'broken.png') });
  await window.goTo(1);
  await notice.getByRole('button').click();
  await expect.poll(() => window.cursorLine()).toBe(line);
  await window.command('File: Revert File');
  await notice.waitFor({ state: 'hidden' });
});

test('by keyboard: Tab to a part, Enter to its line, Escape to the text', async () => {
  const { window } = session;
  await window.preview().locator('#canvas').focus();
  await window.page.keyboard.press('Tab');
  const id = await window.preview().locator(':focus').getAttribute('data-id');
  expect(id).toBeTruthy();
  await part('front-tee').focus();
  await window.page.keyboard.press('Enter');
  await expect.poll(() => window.cursorLine()).toBe(lineOf('tee front-tee on'));
  await window.preview().locator('#canvas').focus();
  await window.page.keyboard.press('Escape');
  await expect.poll(() => window.page.locator('.monaco-editor.focused').count()).toBe(1);
});

test('the picture is saved as SVG and as PNG, proposed beside the circuit file', async () => {
  const { window, folder } = session;
  for (const format of ['svg', 'png'] as const) {
    await window
      .preview()
      .getByRole('button', { name: `Save as ${format.toUpperCase()}` })
      .click();
    await window.acceptSaveDialog(`car.${format}`);
    await expect.poll(() => sizeOf(path.join(folder, `car.${format}`))).toBeGreaterThan(1000);
  }
  const svg = readFileSync(path.join(folder, 'car.svg'), 'utf8');
  expect(svg).toMatch(/^<svg [^>]*xmlns=/);
  expect(svg).toContain('front-tee');
  expect(svg).toContain('<style>');
  expect(readFileSync(path.join(folder, 'car.png')).subarray(1, 4).toString()).toBe('PNG');
});

test('after a reload of the window the same picture is there again', async () => {
  const { window } = session;
  await window.preview().getByRole('button', { name: 'List' }).click();
  await window.preview().locator('#list').waitFor();
  await window.reload();
  await part('front-tee').waitFor();
  await window.preview().locator('#list').waitFor();
});

test('nothing outside the machine was asked for', async () => {
  expect(await session.window.outsideRequests()).toEqual([]);
});

function sizeOf(file: string): number {
  try {
    return readFileSync(file).length;
  } catch {
    return 0;
  }
}
