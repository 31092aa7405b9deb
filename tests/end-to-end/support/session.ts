/** Everything that a test in a window needs, started before it and ended after it, come what may. */
import { writeFileSync } from 'node:fs';
import path from 'node:path';
import { expect, inject } from 'vitest';
import { type EditorServerOptions, startEditorServer } from './editor-server.ts';
import { type EditorWindow, openBrowser, openWindow } from './window.ts';
import { makeWorkspace, type WorkspaceOptions } from './workspace.ts';

export interface SessionOptions extends WorkspaceOptions, Partial<Pick<EditorServerOptions, 'host' | 'userSettings'>> {}

export interface Session {
  readonly window: EditorWindow;
  /** The folder that is open in the window. */
  readonly folder: string;
  /** Leaves a screenshot and the extension's log behind, for whoever wants to know why a test failed. */
  readonly leaveTrace: (name: string) => Promise<void>;
  readonly stop: () => Promise<void>;
}

export async function startSession(options: SessionOptions): Promise<Session> {
  const ending: (() => unknown)[] = [];
  const stop = async () => {
    for (const end of ending.reverse()) await end();
  };
  try {
    const workspace = makeWorkspace(options);
    ending.push(workspace.remove);
    const server = await startEditorServer({
      editor: inject('editor'),
      extensionsFolder: inject('extensionsFolder'),
      host: options.host ?? 'node',
      ...(options.userSettings === undefined ? {} : { userSettings: options.userSettings }),
    });
    ending.push(server.stop);
    const browser = await openBrowser(inject('chromium'));
    ending.push(() => browser.close());
    const window = await openWindow(browser, { address: server.address, folder: workspace.folder });
    const leaveTrace = async (name: string) => {
      const place = path.join(inject('pictures'), `failed-${name.replace(/[^a-z0-9]+/gi, '-').slice(0, 60)}`);
      writeFileSync(`${place}.log`, server.log());
      await window.page.screenshot({ path: `${place}.png` });
    };
    return { window, folder: workspace.folder, leaveTrace, stop };
  } catch (error) {
    await stop();
    throw error;
  }
}

export async function withWindow(options: SessionOptions, act: (session: Session) => Promise<void>): Promise<void> {
  const session = await startSession(options);
  try {
    await act(session);
  } catch (error) {
    await session.leaveTrace(expect.getState().currentTestName ?? 'test');
    throw error;
  } finally {
    await session.stop();
  }
}
