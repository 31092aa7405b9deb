/** A window of the editor in a real browser, and what a person does in it. */
import {
  type Browser,
  type BrowserContext,
  chromium,
  type FrameLocator,
  type Locator,
  type Page,
  type Request,
} from 'playwright-core';
import { expect } from 'vitest';

export interface WindowOptions {
  /** Where the editor server is. */
  readonly address: string;
  /** The folder to open. */
  readonly folder: string;
}

export interface EditorWindow {
  readonly page: Page;
  /** Addresses outside the machine that something asked for so far; must be none. */
  readonly outsideRequests: () => Promise<readonly string[]>;
  readonly openFile: (name: string) => Promise<void>;
  /** Opens a file anywhere below the folder by the end of its path. */
  readonly quickOpen: (end: string) => Promise<void>;
  /** Runs a command by its title, as shown in the command palette. */
  readonly command: (title: string) => Promise<void>;
  readonly goTo: (line: number, column?: number) => Promise<void>;
  /** Puts the keyboard into the text of a file that is open already. */
  readonly focusEditor: (name: string) => Promise<void>;
  /** Accepts the file of this name that the editor's own save dialog proposes. */
  readonly acceptSaveDialog: (name: string) => Promise<void>;
  /** Loads the window anew, as after a restart. */
  readonly reload: () => Promise<void>;
  /** The line that the cursor is on, from 1. */
  readonly cursorLine: () => Promise<number>;
  readonly problems: () => Locator;
  readonly preview: () => FrameLocator;
  readonly close: () => Promise<void>;
}

const flags = [
  '--no-sandbox',
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
];

export async function openBrowser(executablePath: string): Promise<Browser> {
  return chromium.launch({ executablePath, headless: true, args: flags });
}

export async function openWindow(browser: Browser, options: WindowOptions): Promise<EditorWindow> {
  const context = await browser.newContext({ viewport: { width: 1400, height: 860 }, reducedMotion: 'reduce' });
  const outsideRequests = watchRequests(context);
  const page = await context.newPage();
  page.setDefaultTimeout(20_000);
  await page.goto(`${options.address}/?folder=${encodeURIComponent(options.folder)}`);
  await page.locator('.monaco-workbench .part.editor').waitFor({ timeout: 60_000 });
  return { ...actions(page), page, outsideRequests, close: () => context.close() };
}

/** The files of a webview have addresses outside, but the editor's own service worker answers for them from inside. */
function watchRequests(context: BrowserContext): () => Promise<string[]> {
  const suspects: Request[] = [];
  context.on('request', (request) => {
    const { protocol, hostname } = new URL(request.url());
    const inside = hostname === '127.0.0.1' || hostname === 'localhost' || hostname.endsWith('.localhost');
    if (/^(https?|wss?):$/.test(protocol) && !inside) suspects.push(request);
  });
  return async () => {
    const answers = await Promise.all(
      suspects.map(async (request) => ({ request, response: await request.response() })),
    );
    return answers.filter(({ response }) => response?.fromServiceWorker() !== true).map(({ request }) => request.url());
  };
}

function actions(page: Page) {
  const palette = page.locator('.quick-input-widget input.input');
  const command = async (title: string) => {
    // A list that is opened before our commands are known does not get them later, and one that is opened while
    // something else takes the keyboard closes again: then it is opened anew.
    for (let attempt = 1; ; attempt++) {
      try {
        await page.keyboard.press('F1');
        await palette.fill(`>${title}`, { timeout: 3000 });
        const row = page.locator('.quick-input-list .monaco-list-row').filter({ hasText: title }).first();
        await row.click({ timeout: 3000 });
        return;
      } catch (error) {
        if (attempt === 10) throw error;
        await page.keyboard.press('Escape');
        await palette.waitFor({ state: 'hidden' });
      }
    }
  };
  return {
    command,
    openFile: async (name: string) => {
      const row = page.locator(`.explorer-viewlet .monaco-list-row[aria-label^="${name}"]`);
      await row.dblclick();
      await page.locator(`.tab[data-resource-name="${name}"].active`).waitFor();
      await page.locator('.monaco-editor.focused').first().waitFor();
    },
    quickOpen: async (end: string) => {
      const name = end.slice(end.lastIndexOf('/') + 1);
      await page.keyboard.press('Control+P');
      await palette.waitFor();
      await palette.fill(end);
      // The best match is on top, once the list is of what was typed.
      await page.locator('.quick-input-list .monaco-list-row[data-index="0"]', { hasText: name }).click();
      await page.locator(`.tab[data-resource-name="${name}"].active`).waitFor();
      await page.locator('.monaco-editor.focused').first().waitFor();
    },
    goTo: async (line: number, column = 1) => {
      await page.keyboard.press('Control+G');
      await palette.waitFor();
      await palette.fill(`:${line}:${column}`);
      await page.keyboard.press('Enter');
      await palette.waitFor({ state: 'hidden' });
      await page.locator('.monaco-editor.focused').first().waitFor();
    },
    focusEditor: async (name: string) => {
      await page.locator(`.tab[data-resource-name="${name}"]`).first().click();
      await page.locator('.monaco-editor.focused').first().waitFor();
    },
    acceptSaveDialog: async (name: string) => {
      await expect.poll(async () => (await palette.inputValue()).endsWith(`/${name}`)).toBe(true);
      await page.locator('.quick-input-widget .quick-input-action, .quick-input-widget .monaco-button').first().click();
      await palette.waitFor({ state: 'hidden' });
    },
    reload: async () => {
      const loaded = page.waitForEvent('load');
      await command('Developer: Reload Window');
      await loaded;
      await page.locator('.monaco-workbench .part.editor').waitFor({ timeout: 60_000 });
    },
    cursorLine: async () => {
      const text = await page.locator('#status\\.editor\\.selection').textContent();
      return Number(/Ln (\d+)/.exec(text ?? '')?.[1]);
    },
    problems: () => page.locator('.markers-panel .monaco-list-row'),
    preview: () => page.frameLocator('iframe.webview.ready').frameLocator('iframe#active-frame'),
  };
}
