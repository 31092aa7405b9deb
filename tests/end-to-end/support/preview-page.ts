/** The preview's page in a browser without an editor round it: its real frame, policy, script and styles, and a host that takes notes. */
import { createReadStream, existsSync } from 'node:fs';
import { createServer, type Server } from 'node:http';
import path from 'node:path';
import type { Browser, Page } from 'playwright-core';
import type { ToHost, ToPage } from '../../../extension/preview/messages.ts';
import { createNonce, pageHtml } from '../../../extension/preview/page.ts';
import { editorColours, type ThemeKind } from './editor-colours.ts';

export interface PreviewPage {
  readonly page: Page;
  readonly send: (message: ToPage) => Promise<void>;
  /** What the page has told its host, oldest first. */
  readonly told: () => Promise<readonly ToHost[]>;
  /** What the page asked its host to keep. */
  readonly kept: () => Promise<unknown>;
  /** Breaches of the content-security policy, and errors of the script; must stay empty. */
  readonly troubles: readonly string[];
  readonly close: () => Promise<void>;
}

export interface PreviewPageOptions {
  readonly theme?: ThemeKind;
  readonly kept?: unknown;
  readonly reducedMotion?: 'reduce' | 'no-preference';
  readonly forcedColors?: 'active' | 'none';
}

const dist = path.resolve(import.meta.dirname, '../../../dist');
const types: Readonly<Record<string, string>> = { '.js': 'text/javascript', '.css': 'text/css' };

export async function openPreviewPage(browser: Browser, options: PreviewPageOptions = {}): Promise<PreviewPage> {
  const { theme = 'vscode-dark', kept, reducedMotion = 'reduce', forcedColors = 'none' } = options;
  const server = await servePage();
  const context = await browser.newContext({ viewport: { width: 900, height: 760 }, reducedMotion, forcedColors });
  const page = await context.newPage();
  const troubles: string[] = [];
  page.on('pageerror', (error) => troubles.push(String(error)));
  page.on('console', (message) => {
    if (message.type() === 'error') troubles.push(message.text());
  });
  await page.addInitScript(standIn, { kept, theme, colours: editorColours(theme) });
  await page.goto(addressOf(server));
  return {
    page,
    troubles,
    send: (message) => page.evaluate((data) => window.postMessage(data), message),
    told: () => page.evaluate(() => window.told),
    kept: () => page.evaluate(() => window.kept),
    close: async () => {
      await context.close();
      server.closeAllConnections();
      await new Promise((resolve) => server.close(resolve));
    },
  };
}

declare global {
  interface Window {
    told: ToHost[];
    kept: unknown;
  }
}

/** Runs in the page before its own script: the editor's part of a webview. */
function standIn(given: { kept: unknown; theme: string; colours: Readonly<Record<string, string>> }): void {
  window.told = [];
  window.kept = given.kept;
  Object.assign(window, {
    acquireVsCodeApi: () => ({
      postMessage: (message: ToHost) => window.told.push(message),
      getState: () => window.kept,
      setState: (state: unknown) => {
        window.kept = state;
      },
    }),
  });
  document.addEventListener('DOMContentLoaded', () => {
    document.body.setAttribute('data-vscode-theme-kind', given.theme);
    for (const [name, colour] of Object.entries(given.colours))
      document.documentElement.style.setProperty(name, colour);
  });
  document.addEventListener('securitypolicyviolation', ({ violatedDirective, blockedURI }) => {
    console.error(`The policy stopped ${blockedURI} (${violatedDirective}).`);
  });
}

async function servePage(): Promise<Server> {
  const server = createServer((request, response) => {
    const name = (request.url ?? '/').slice(1);
    if (name === '') {
      const cspSource = addressOf(server);
      const styles = ['picture.css', 'preview.css'];
      response.setHeader('Content-Type', 'text/html');
      response.end(pageHtml({ language: 'en', nonce: createNonce(), cspSource, script: 'preview.js', styles }));
    } else if (/^[a-z]+\.(js|css)$/.test(name) && existsSync(path.join(dist, name))) {
      response.setHeader('Content-Type', types[path.extname(name)] ?? 'text/plain');
      createReadStream(path.join(dist, name)).pipe(response);
    } else {
      response.statusCode = name === 'favicon.ico' ? 204 : 404;
      response.end();
    }
  });
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
  return server;
}

function addressOf(server: Server): string {
  const address = server.address();
  if (address === null || typeof address === 'string') throw new Error('The page has no address.');
  return `http://127.0.0.1:${address.port}`;
}
