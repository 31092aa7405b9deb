/** Puts the window together: server, commands, status, previews. Everything that lives is made here and ends with the window. */
import { type ExtensionContext, Uri, window } from 'vscode';
import type { Platform } from './client/platform.ts';
import { createServer } from './client/server.ts';
import { registerCommands } from './commands.ts';
import { createPreviews } from './preview/previews.ts';
import { createSheets } from './sheets/sheets.ts';
import { createStatus } from './status.ts';

export async function begin(context: ExtensionContext, platform: Platform): Promise<void> {
  const log = window.createOutputChannel('Linewright', { log: true });
  const server = createServer({ platform, extensionUri: context.extensionUri, log });
  const previews = createPreviews({ extensionUri: context.extensionUri, server, log });
  const storage = Uri.joinPath(context.globalStorageUri, 'print');
  const sheets = createSheets({ extensionUri: context.extensionUri, server, log, storage });
  context.subscriptions.push(
    log,
    previews,
    sheets,
    createStatus(server),
    // Before the first start: a server that does not come up can then be started again.
    ...registerCommands({ extensionUri: context.extensionUri, server, previews, sheets }),
    { dispose: () => server.stop() },
  );
  await server.start();
}
