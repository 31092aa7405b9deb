/** Entry of the extension in a browser: the language server is a worker. */
import { type ExtensionContext, Uri, workspace } from 'vscode';
import { LanguageClient } from 'vscode-languageclient/browser';
import { begin } from './begin.ts';
import type { Platform } from './client/platform.ts';

export function activate(context: ExtensionContext): Promise<void> {
  return begin(context, browser(context));
}

function browser(context: ExtensionContext): Platform {
  return {
    ownSchemes: [],
    createClient: async (id, name, options) => {
      // A worker may not be started from the address of an extension's file, so its text is read and handed over.
      const text = await workspace.fs.readFile(Uri.joinPath(context.extensionUri, 'dist/server-browser.js'));
      const address = URL.createObjectURL(new Blob([text.slice()], { type: 'text/javascript' }));
      const worker = new Worker(address, { name: 'Linewright' });
      const release = () => {
        worker.terminate();
        URL.revokeObjectURL(address);
      };
      return { client: new LanguageClient(id, name, worker, options), release };
    },
  };
}
