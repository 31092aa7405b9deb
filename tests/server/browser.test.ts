/** The server as it runs in a browser: bundled for a worker, every file through the window, layout in the same worker. */
import { readFileSync, rmSync } from 'node:fs';
import { mkdtemp } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { Worker } from 'node:worker_threads';
import { build } from 'esbuild';
import { afterAll, beforeAll, expect, test } from 'vitest';
import type { PictureAnswer } from '../../server/protocol.ts';
import { root } from '../architecture/sources.ts';
import { stock, van } from './support/circuits.ts';

interface Message {
  readonly id?: number;
  readonly method?: string;
  readonly params?: { readonly uri?: string; readonly diagnostics?: readonly { readonly code?: unknown }[] };
  readonly result?: unknown;
}

/** The scope of a web worker as far as the server sees it: `self`, `postMessage` and the one slot `onmessage`. */
const workerScope = `
const { parentPort } = require('node:worker_threads');
globalThis.self = globalThis;
globalThis.postMessage = (message) => parentPort.postMessage(message);
globalThis.onmessage = null;
globalThis.addEventListener = (type, listener) => {
  if (type === 'message') parentPort.on('message', (data) => listener({ data }));
};
globalThis.document = undefined;
parentPort.on('message', (data) => globalThis.onmessage?.({ data }));
`;

const folder = 'vscode-vfs://garage';
const files: Readonly<Record<string, string>> = { [`${folder}/stock.circuit`]: stock };
const heard: Message[] = [];
const wakers = new Set<() => void>();
let worker: Worker;
let lastId = 0;
let place = '';

beforeAll(async () => {
  place = await mkdtemp(join(tmpdir(), 'linewright-browser-'));
  const outfile = join(place, 'server-browser.js');
  await build({
    bundle: true,
    platform: 'browser',
    format: 'iife',
    mainFields: ['browser', 'module', 'main'],
    target: 'es2022',
    absWorkingDir: root,
    logLevel: 'warning',
    entryPoints: ['server/main-browser.ts'],
    outfile,
  });
  worker = new Worker(`${workerScope}\n${readFileSync(outfile, 'utf8')}`, { eval: true });
  worker.on('message', (message: Message) => {
    if (message.method !== undefined && message.id !== undefined) answer(message);
    heard.push(message);
    for (const wake of [...wakers]) wake();
  });
});

afterAll(async () => {
  await worker.terminate();
  rmSync(place, { recursive: true, force: true });
});

/** The window's side of what the server asks. */
function answer({ id, method, params }: Message): void {
  const text = files[params?.uri ?? ''];
  const results: Readonly<Record<string, unknown>> = {
    'linewright/fs/stat': { kind: text !== undefined ? 'file' : params?.uri === folder ? 'directory' : 'missing' },
    'linewright/fs/readFile': text === undefined ? { kind: 'missing' } : { kind: 'text', text },
    'linewright/fs/readDirectory': { entries: [{ name: 'stock.circuit', kind: 'file' }] },
  };
  worker.postMessage({ jsonrpc: '2.0', id, result: results[method ?? ''] ?? null });
}

async function message(wanted: (message: Message) => boolean): Promise<Message> {
  for (;;) {
    const found = heard.find(wanted);
    if (found !== undefined) return found;
    await new Promise<void>((resolve) => {
      const wake = () => {
        wakers.delete(wake);
        resolve();
      };
      wakers.add(wake);
    });
  }
}

const tell = (method: string, params: object): void => worker.postMessage({ jsonrpc: '2.0', method, params });

async function ask<R>(method: string, params: object, is: (result: unknown) => result is R): Promise<R> {
  lastId += 1;
  const id = lastId;
  worker.postMessage({ jsonrpc: '2.0', id, method, params });
  const { result } = await message((each) => each.id === id && each.method === undefined);
  if (!is(result)) throw new Error(`${method} answered ${JSON.stringify(result)}`);
  return result;
}

const isObject = (value: unknown): value is object => typeof value === 'object' && value !== null;
const isPicture = (value: unknown): value is PictureAnswer => isObject(value) && 'kind' in value;

test('it checks a file with what it uses, draws it, and hears the window afterwards too', async () => {
  // Sent at once: the server has to listen from its first moment.
  await ask(
    'initialize',
    {
      processId: null,
      rootUri: null,
      workspaceFolders: [{ uri: folder, name: 'garage' }],
      capabilities: {},
      initializationOptions: { ownSchemes: [], servedSchemes: ['vscode-vfs'] },
    },
    isObject,
  );
  tell('initialized', {});
  const uri = `${folder}/van.circuit`;
  tell('textDocument/didOpen', { textDocument: { uri, languageId: 'linewright', version: 1, text: van } });
  const published = await message(
    ({ method, params }) => method === 'textDocument/publishDiagnostics' && params?.uri === uri,
  );
  expect(published.params?.diagnostics?.map(({ code }) => code)).not.toContain('use-failed');
  const params = { uri, circuit: 'planned', theme: 'light', whenBroken: 'say-so' };
  const first = await ask('linewright/picture', params, isPicture);
  expect(first.kind).toBe('drawn');
  const hover = await ask(
    'textDocument/hover',
    { textDocument: { uri }, position: { line: 16, character: 5 } },
    isObject,
  );
  expect(JSON.stringify(hover)).toContain('a run of tube');
});
