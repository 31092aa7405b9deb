/** One running editor with our packaged extension in it, on a port of its own, with no way to the outside. */
import { mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { createServer } from 'node:net';
import { tmpdir } from 'node:os';
import path from 'node:path';
import type { InstalledEditor } from '../provision/editor.ts';
import { run, start } from './process.ts';
import { settings } from './settings.ts';

/** Where the extension runs: in a Node process as on a desktop, or in a browser worker as on the web. */
export type ExtensionHost = 'node' | 'web';

export interface EditorServerOptions {
  readonly editor: InstalledEditor;
  readonly extensionsFolder: string;
  readonly host: ExtensionHost;
  readonly userSettings?: Readonly<Record<string, unknown>>;
}

export interface EditorServer {
  readonly address: string;
  /** What our extension and its server have written to their log. */
  readonly log: () => string;
  readonly stop: () => Promise<void>;
}

/** Puts a packaged extension into a new folder of installed extensions. */
export async function installExtension(editor: InstalledEditor, vsix: string, extensionsFolder: string): Promise<void> {
  const home = mkdtempSync(path.join(tmpdir(), 'linewright-install-'));
  try {
    const folders = foldersIn(home, extensionsFolder);
    await run({
      command: editor.node,
      args: [editor.entry, ...folders, '--install-extension', vsix],
      env: shielded(home),
    });
  } finally {
    rmSync(home, { recursive: true, force: true });
  }
}

export async function startEditorServer(options: EditorServerOptions): Promise<EditorServer> {
  const home = mkdtempSync(path.join(tmpdir(), 'linewright-editor-'));
  const userFolder = path.join(home, 'data/User');
  mkdirSync(userFolder, { recursive: true });
  const chosen = { ...settings(options.host), ...options.userSettings };
  writeFileSync(path.join(userFolder, 'settings.json'), JSON.stringify(chosen, undefined, 2));

  const port = await freePort();
  const { editor } = options;
  const program = start({
    command: editor.node,
    args: [
      editor.entry,
      ...foldersIn(home, options.extensionsFolder),
      ...['--bind-addr', `127.0.0.1:${port}`, '--auth', 'none', '--disable-telemetry', '--disable-update-check'],
      ...['--disable-workspace-trust', '--disable-getting-started-override', '--disable-proxy'],
    ],
    env: shielded(home),
  });
  const stop = async () => {
    await program.stop();
    rmSync(home, { recursive: true, force: true, maxRetries: 5, retryDelay: 200 });
  };
  const address = `http://127.0.0.1:${port}`;
  try {
    await untilHealthy(address, program);
  } catch (error) {
    await stop();
    throw error;
  }
  return { address, log: () => logIn(path.join(home, 'data/logs')), stop };
}

function logIn(folder: string): string {
  const names = readdirSync(folder, { recursive: true, encoding: 'utf8' }).filter((name) =>
    name.endsWith('Linewright.log'),
  );
  return names.map((name) => readFileSync(path.join(folder, name), 'utf8')).join('\n');
}

function foldersIn(home: string, extensionsFolder: string): string[] {
  const config = path.join(home, 'config.yaml');
  writeFileSync(config, '');
  return ['--config', config, '--user-data-dir', path.join(home, 'data'), '--extensions-dir', extensionsFolder];
}

/** A private home, nothing inherited from an editor that we may be running in, and no extension gallery to ask. */
function shielded(home: string): NodeJS.ProcessEnv {
  const inherited = Object.entries(process.env).filter(([name]) => !/^(VSCODE_|XDG_|NODE_OPTIONS$|npm_)/.test(name));
  return { ...Object.fromEntries(inherited), HOME: home, EXTENSIONS_GALLERY: '{}' };
}

async function untilHealthy(address: string, program: ReturnType<typeof start>): Promise<void> {
  for (let attempt = 0; attempt < 300; attempt++) {
    if (program.exited()) break;
    const answer = await fetch(`${address}/healthz`).catch(() => undefined);
    if (answer?.ok) return;
    await new Promise((resolve) => setTimeout(resolve, 100));
  }
  throw new Error(`The editor did not start:\n${program.output().slice(-3000)}`);
}

function freePort(): Promise<number> {
  return new Promise((resolve, reject) => {
    const probe = createServer();
    probe.on('error', reject);
    probe.listen(0, '127.0.0.1', () => {
      const address = probe.address();
      probe.close(() => {
        if (address === null || typeof address === 'string') reject(new Error('No port to be had.'));
        else resolve(address.port);
      });
    });
  });
}
