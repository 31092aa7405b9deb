/** Entry of the extension on a desktop: the language server is a process on the editor's own runtime. */
import { type ExtensionContext, Uri } from 'vscode';
import { LanguageClient, TransportKind } from 'vscode-languageclient/node';
import { begin } from './begin.ts';
import type { Platform } from './client/platform.ts';

export function activate(context: ExtensionContext): Promise<void> {
  return begin(context, desktop(context));
}

function desktop(context: ExtensionContext): Platform {
  const module = Uri.joinPath(context.extensionUri, 'dist/server.cjs').fsPath;
  const transport = TransportKind.ipc;
  return {
    ownSchemes: ['file'],
    createClient: async (id, name, options) => {
      const debug = { module, transport, options: { execArgv: ['--nolazy', '--inspect=6009'] } };
      return {
        client: new LanguageClient(id, name, { run: { module, transport }, debug }, options),
        release: () => {},
      };
    },
  };
}
