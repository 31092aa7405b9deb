/** Before the first end-to-end test: editor and browser are provisioned, the extension is built, packaged and installed. */
import { mkdirSync, rmSync } from 'node:fs';
import path from 'node:path';
import type { TestProject } from 'vitest/node';
import { findChromium } from './provision/chromium.ts';
import { type InstalledEditor, installEditor } from './provision/editor.ts';
import { installExtension } from './support/editor-server.ts';
import { run } from './support/process.ts';

declare module 'vitest' {
  interface ProvidedContext {
    chromium: string;
    editor: InstalledEditor;
    extensionsFolder: string;
    /** Where screenshots for people go. */
    pictures: string;
  }
}

export default async function setup(project: TestProject): Promise<void> {
  const root = path.resolve(import.meta.dirname, '../..');
  const cache = path.join(root, '.cache');
  mkdirSync(cache, { recursive: true });

  const chromium = await findChromium();
  const editor = await installEditor(path.join(import.meta.dirname, 'editor'), cache);

  const vsix = path.join(cache, 'linewright.vsix');
  await run({
    command: 'npm',
    args: ['run', '--silent', 'package', '--', '--out', vsix],
    cwd: root,
  });

  const extensionsFolder = path.join(cache, 'extensions');
  rmSync(extensionsFolder, { recursive: true, force: true });
  await installExtension(editor, vsix, extensionsFolder);

  const pictures = path.join(cache, 'pictures');
  rmSync(pictures, { recursive: true, force: true });
  mkdirSync(pictures, { recursive: true });

  project.provide('chromium', chromium);
  project.provide('editor', editor);
  project.provide('extensionsFolder', extensionsFolder);
  project.provide('pictures', pictures);
}
