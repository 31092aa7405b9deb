/** The page's frame: its policy is strict and it brings no style, script or word of its own. */
import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { expect, test } from 'vitest';
import { createNonce, pageHtml, policy } from '../../../extension/preview/page.ts';

const html = pageHtml({
  language: 'en',
  nonce: 'abc',
  cspSource: 'https://webview.test',
  script: 'https://webview.test/preview.js',
  styles: ['https://webview.test/picture.css', 'https://webview.test/preview.css'],
});

test('the policy allows nothing but our own script, our own style and pictures as data', () => {
  const rules = Object.fromEntries(
    policy({ nonce: 'abc', cspSource: 'https://webview.test' })
      .split('; ')
      .map((rule) => [rule.split(' ')[0], rule.split(' ').slice(1).join(' ')]),
  );
  expect(rules).toEqual({
    'default-src': "'none'",
    'base-uri': "'none'",
    'form-action': "'none'",
    'img-src': 'https://webview.test data:',
    'style-src': 'https://webview.test',
    'script-src': "'nonce-abc'",
  });
});

test('the frame has no inline style, no handler and one script, which carries the nonce', () => {
  expect(html).toContain(`content="${policy({ nonce: 'abc', cspSource: 'https://webview.test' })}"`);
  expect(html).not.toMatch(/\sstyle=|<style|\son\w+=|unsafe/i);
  expect(html.match(/<script[^>]*>/g)).toEqual(['<script nonce="abc" src="https://webview.test/preview.js">']);
});

test('the page makes no markup of text and sets no inline style', () => {
  const folder = path.resolve(import.meta.dirname, '../../../extension/webview');
  for (const name of readdirSync(folder, { recursive: true, encoding: 'utf8' }).filter((file) =>
    file.endsWith('.ts'),
  )) {
    const text = readFileSync(path.join(folder, name), 'utf8');
    expect(text, name).not.toMatch(
      /innerHTML|outerHTML|insertAdjacentHTML|document\.write|\.style\b|setAttribute\('style'|eval\(/,
    );
  }
});

test('every page has a nonce of its own', () => {
  const nonces = Array.from({ length: 100 }, createNonce);
  expect(new Set(nonces).size).toBe(100);
  for (const nonce of nonces) expect(nonce).toMatch(/^[A-Za-z0-9+/]{32}$/);
});
