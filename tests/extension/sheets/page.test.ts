/** The frame of a sheet's page lets nothing in but our own script and styles. */
import { expect, test } from 'vitest';
import { policy } from '../../../extension/preview/page.ts';
import { sheetPageHtml } from '../../../extension/sheets/page.ts';

const html = sheetPageHtml({
  language: 'en',
  nonce: 'abc',
  cspSource: 'https://webview.test',
  script: 'https://webview.test/sheet.js',
  styles: ['https://webview.test/paper.css', 'https://webview.test/sheet.css'],
});

test('it is under the policy of the preview, with one script that carries the nonce and no style of its own', () => {
  expect(html).toContain(`content="${policy({ nonce: 'abc', cspSource: 'https://webview.test' })}"`);
  expect(html).not.toMatch(/\sstyle=|<style|\son\w+=|unsafe/i);
  expect(html.match(/<script[^>]*>/g)).toEqual(['<script nonce="abc" src="https://webview.test/sheet.js">']);
});

test('the paper can be reached and moved by the keys', () => {
  expect(html).toMatch(/id="paper" role="region" tabindex="0"/);
});
