/** The preview's page on its own: what it shows, how it is moved by mouse and key, what it says, and that nothing gets past its policy. */
import axe from 'axe-core';
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, inject, test } from 'vitest';
import type { ToPage } from '../../extension/preview/messages.ts';
import { pageWords } from '../../extension/preview/words.ts';
import { van } from '../schematic/sketches.ts';
import { drawn } from './support/drawn.ts';
import { themeKinds } from './support/editor-colours.ts';
import { openPreviewPage, type PreviewPage, type PreviewPageOptions } from './support/preview-page.ts';
import { openBrowser } from './support/window.ts';

let browser: Browser;
beforeAll(async () => {
  browser = await openBrowser(inject('chromium'));
});
afterAll(() => browser.close());

const start: ToPage = {
  type: 'start',
  words: pageWords({ t: (sentence) => sentence }),
  uri: 'file:///van.circuit',
  circuit: 'planned',
};

async function withPage(options: PreviewPageOptions, act: (page: PreviewPage) => Promise<void>): Promise<void> {
  const page = await openPreviewPage(browser, options);
  try {
    await act(page);
    expect(page.troubles).toEqual([]);
  } finally {
    await page.close();
  }
}

/** A page that shows the van, fitted. */
async function withVan(options: PreviewPageOptions, act: (page: PreviewPage) => Promise<void>): Promise<void> {
  await withPage(options, async (page) => {
    await page.send(start);
    await page.send(await drawn(van()));
    await page.page.locator('#stage .lw-part').first().waitFor();
    await act(page);
  });
}

const transformOf = ({ page }: PreviewPage) => page.locator('#stage > .viewport').getAttribute('transform');

async function focusPart({ page }: PreviewPage, id: string): Promise<void> {
  await page.locator('#canvas').focus();
  await page.keyboard.press('Tab');
  await page.locator(`#stage [data-id="${id}"][tabindex]`).focus();
}

async function clickMiddle({ page }: PreviewPage, id: string): Promise<void> {
  const box = await page.locator(`#stage [data-id="${id}"][tabindex] .lw-hit`).boundingBox();
  if (box === null) throw new Error(`${id} is not drawn.`);
  await page.mouse.click(box.x + box.width / 2, box.y + box.height / 2);
}

const focusedPart = ({ page }: PreviewPage) => page.evaluate(() => document.activeElement?.getAttribute('data-id'));

describe('what is shown', () => {
  test('the page says that it is ready, and waits in words', () =>
    withPage({}, async (page) => {
      expect(await page.told()).toEqual([{ type: 'ready' }]);
      await page.send(start);
      await page.page.getByText('Waiting for the first picture.').waitFor();
    }));

  test('the picture lies whole in the canvas and carries its title for screen readers', () =>
    withVan({}, async (page) => {
      const canvas = await page.page.locator('#canvas').boundingBox();
      const picture = await page.page.locator('#stage .lw-paper').boundingBox();
      expect(picture?.x).toBeGreaterThanOrEqual(canvas?.x ?? Number.NaN);
      expect(picture?.y).toBeGreaterThanOrEqual(canvas?.y ?? Number.NaN);
      expect((picture?.x ?? 0) + (picture?.width ?? 0)).toBeLessThanOrEqual((canvas?.x ?? 0) + (canvas?.width ?? 0));
      const label = await page.page.locator('#canvas').getAttribute('aria-label');
      expect(label).toContain(van().title);
      expect(label).toContain('As planned');
    }));

  test('an edit patches the picture: what has not changed stays the same element, with the focus and the view', () =>
    withVan({}, async (page) => {
      await focusPart(page, 'main');
      await page.page.keyboard.press('+');
      const view = await transformOf(page);
      await page.page.evaluate(() => document.activeElement?.setAttribute('data-kept', 'yes'));
      const changed = van();
      await page.send(
        await drawn({
          ...changed,
          nodes: changed.nodes.map((node) => (node.id === 'pedal' ? { ...node, label: 'new pedal' } : node)),
        }),
      );
      await page.page.locator('#stage').getByText('new pedal', { exact: true }).waitFor();
      expect(await focusedPart(page)).toBe('main');
      expect(await transformOf(page)).toBe(view);
    }));

  test('broken text keeps the last good picture, dims it, says so and leads to the place', () =>
    withVan({}, async (page) => {
      const parts = await page.page.locator('#stage .lw-part').count();
      await page.send({ type: 'broken', message: 'a length was expected', line: 12 });
      await page.page.getByText('This picture is from before the error on line 12: a length was expected').waitFor();
      expect(await page.page.locator('#stage .lw-part').count()).toBe(parts);
      expect(
        await page.page.locator('#stage').evaluate((stage) => Number(getComputedStyle(stage).opacity)),
      ).toBeLessThan(1);
      await page.page.getByRole('button', { name: 'Go to line 12' }).click();
      expect((await page.told()).at(-1)).toEqual({ type: 'openBroken' });

      await page.send(await drawn(van()));
      await page.page.locator('#notice').waitFor({ state: 'hidden' });
      expect(await page.page.locator('#stage').evaluate((stage) => getComputedStyle(stage).opacity)).toBe('1');
    }));

  test('the two circuits can be chosen only where the file tells them apart', () =>
    withVan({}, async (page) => {
      await page.page.getByRole('button', { name: 'As found' }).click();
      expect((await page.told()).at(-1)).toEqual({ type: 'circuit', circuit: 'found' });
      await page.send(await drawn(van(), { views: ['planned'] }));
      await page.page.getByRole('button', { name: 'As found' }).waitFor({ state: 'hidden' });
    }));

  test('a screen reader is told the outcome once the typing has stopped', () =>
    withVan({}, async (page) => {
      const live = page.page.locator('#live');
      expect(await live.textContent()).toBe('');
      await expect.poll(() => live.textContent(), { timeout: 3000 }).toBe('Errors: 0, warnings: 1, to measure: 2');
    }));
});

describe('mouse and touch', () => {
  test('a click on a part asks for its place in the text and marks it', () =>
    withVan({}, async (page) => {
      await clickMiddle(page, 'front-tee');
      expect((await page.told()).at(-1)).toEqual({ type: 'open', id: 'front-tee' });
      expect(await page.page.locator('#stage .lw-selected').getAttribute('data-id')).toBe('front-tee');
    }));

  test('the wheel zooms to the pointer and a drag pans, without opening anything', () =>
    withVan({}, async (page) => {
      const before = await transformOf(page);
      await page.page.mouse.move(450, 400);
      await page.page.mouse.wheel(0, -300);
      await expect.poll(() => transformOf(page)).not.toBe(before);
      const zoomed = await transformOf(page);
      await page.page.mouse.down();
      await page.page.mouse.move(520, 440, { steps: 4 });
      await page.page.mouse.up();
      expect(await transformOf(page)).not.toBe(zoomed);
      expect((await page.told()).filter(({ type }) => type === 'open')).toEqual([]);
    }));

  test('parts are hit within a finger of 24 pixels even when the picture is small', () =>
    withVan({}, async (page) => {
      for (let press = 0; press < 8; press++) await page.page.getByRole('button', { name: 'Zoom out' }).click();
      const box = await page.page.locator('#stage [data-id="main"][tabindex] .lw-hit').boundingBox();
      if (box === null) throw new Error('The master cylinder is not drawn.');
      expect(box.width).toBeLessThan(24);
      await page.page.mouse.click(box.x + box.width / 2, box.y - 6);
      expect((await page.told()).at(-1)?.type).toBe('open');
    }));
});

describe('keyboard', () => {
  test('Tab reaches the parts, Enter goes to the text, Escape to the editor', () =>
    withVan({}, async (page) => {
      await page.page.locator('#canvas').focus();
      await page.page.keyboard.press('Tab');
      const first = await focusedPart(page);
      expect(first).toBeTruthy();
      await page.page.keyboard.press('Enter');
      expect((await page.told()).at(-1)).toEqual({ type: 'open', id: first });
      await page.page.keyboard.press('Escape');
      expect((await page.told()).at(-1)).toEqual({ type: 'focusEditor' });
    }));

  test('arrows follow the lines from part to part', () =>
    withVan({}, async (page) => {
      await focusPart(page, 'front-tee');
      const walked = new Set<string | null | undefined>();
      for (const key of ['ArrowUp', 'ArrowLeft', 'ArrowLeft', 'ArrowDown', 'ArrowRight', 'ArrowRight']) {
        await page.page.keyboard.press(key);
        walked.add(await focusedPart(page));
      }
      expect(walked.size).toBeGreaterThan(2);
    }));

  test('plus, minus, 0, F and the arrows move the picture', () =>
    withVan({}, async (page) => {
      const fitted = await transformOf(page);
      await page.page.locator('#canvas').focus();
      for (const key of ['+', '-', '0', 'ArrowLeft', 'ArrowUp']) {
        const before = await transformOf(page);
        await page.page.keyboard.press(key);
        expect(await transformOf(page), key).not.toBe(before);
      }
      await page.page.keyboard.press('f');
      expect(await transformOf(page)).toBe(fitted);
    }));

  test('the list says every part and line, leads to the text, and points into the picture', () =>
    withVan({}, async (page) => {
      await page.page.getByRole('button', { name: 'List' }).click();
      const items = page.page.locator('#list button');
      expect(await items.count()).toBe(van().nodes.length + van().lines.length);
      await page.page.locator('#list button[data-part="rear-tee"]').focus();
      expect(await page.page.locator('#stage .lw-selected').getAttribute('data-id')).toBe('rear-tee');
      await page.page.keyboard.press('Enter');
      expect((await page.told()).at(-1)).toEqual({ type: 'open', id: 'rear-tee' });
    }));
});

describe('memory', () => {
  test('view, list and selection are kept and found again', () =>
    withVan({}, async (page) => {
      await page.page.getByRole('button', { name: 'Zoom in' }).click();
      await page.page.getByRole('button', { name: 'List' }).click();
      await page.send({ type: 'highlight', id: 'rear-tee' });
      await page.page.locator('#stage .lw-selected').waitFor();
      const [kept, view] = [await page.kept(), await transformOf(page)];
      await withVan({ kept }, async (again) => {
        expect(await transformOf(again)).toBe(view);
        expect(await again.page.locator('#stage .lw-selected').getAttribute('data-id')).toBe('rear-tee');
        await again.page.locator('#list').waitFor();
      });
    }));

  test('what another version has kept is not believed', () =>
    withVan({ kept: { version: 99, uri: 'file:///van.circuit', view: { scale: 'x' } } }, async (page) => {
      await page.page.locator('#stage .lw-part').first().waitFor();
    }));
});

describe('safety', () => {
  const hostile = `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 10 10"><script>window.evil = 1</script><rect data-id="a" tabindex="0" width="9" height="9" onclick="window.evil = 1" style="fill:red"/><a href="https://example.org"><text>out</text></a><foreignObject><b>x</b></foreignObject></svg>`;

  test('a picture can neither run, style, load nor lead anywhere', async () => {
    const page = await openPreviewPage(browser);
    await page.send(start);
    await page.send(await drawn(van(), { svg: hostile }));
    await page.page.locator('#stage rect').click();
    expect(await page.page.evaluate(() => 'evil' in window)).toBe(false);
    const refused = '#stage script, #stage a, #stage foreignObject, #stage [style], #stage [onclick]';
    expect(await page.page.locator(refused).count()).toBe(0);
    await page.close();
  });

  test('the policy lets no script in that does not carry its nonce', async () => {
    const page = await openPreviewPage(browser);
    await page.page.evaluate(() => {
      const script = document.createElement('script');
      script.textContent = 'window.evil = 1';
      document.body.append(script);
    });
    expect(await page.page.evaluate(() => 'evil' in window)).toBe(false);
    expect(page.troubles.join()).toContain('policy');
    await page.close();
  });

  test('a PNG is made from a picture that stands alone', () =>
    withVan({}, async (page) => {
      const svg =
        '<svg xmlns="http://www.w3.org/2000/svg" width="40" height="30" viewBox="0 0 40 30"><style>.a{fill:#c00}</style><rect class="a" width="40" height="30"/></svg>';
      await page.send({ type: 'rasterise', job: 7, svg, scale: 2 });
      const answer = () =>
        page.page.evaluate(() =>
          window.told.flatMap((told) => (told.type === 'raster' ? [[told.job, ...told.png]] : [])),
        );
      await expect.poll(answer).toHaveLength(1);
      const [job, ...png] = (await answer())[0] ?? [];
      expect(job).toBe(7);
      expect(png.slice(0, 4)).toEqual([0x89, 0x50, 0x4e, 0x47]);
      const bytes = Buffer.from(png);
      expect([bytes.readUInt32BE(16), bytes.readUInt32BE(20)]).toEqual([80, 60]);
    }));
});

describe('for every eye', () => {
  test.each(themeKinds)('%s: no barrier that axe finds, and a picture for people', (theme) =>
    withVan({ theme }, async (page) => {
      await page.page.getByRole('button', { name: 'List' }).click();
      await page.send({ type: 'highlight', id: 'front-tee' });
      await page.page.locator('#stage .lw-selected').waitFor();
      await page.page.screenshot({ path: `${inject('pictures')}/preview-${theme}.png` });
      await page.page.evaluate(axe.source);
      const found = await page.page.evaluate(() =>
        Reflect.get(window, 'axe').run({ runOnly: ['wcag2a', 'wcag2aa', 'wcag21aa', 'wcag22aa'] }),
      );
      expect(
        found.violations.map((violation: { id: string; nodes: { html: string }[] }) => [
          violation.id,
          violation.nodes[0]?.html,
        ]),
      ).toEqual([]);
    }),
  );

  test('forced colours: lines and words stand out from the ground', () =>
    withVan({ forcedColors: 'active' }, async (page) => {
      await page.page.screenshot({ path: `${inject('pictures')}/preview-forced-colours.png` });
      const tones = await page.page
        .locator('#stage .lw-body')
        .first()
        .evaluate((body) => {
          const { fill, stroke } = getComputedStyle(body);
          return { fill, stroke };
        });
      expect(tones.fill).not.toBe(tones.stroke);
    }));
});
