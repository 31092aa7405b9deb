/** Greets the window: says what the server can do, with the kinds of code actions and everything that starts completion. */
import { DefaultLanguageServer } from 'langium/lsp';
import type { InitializeParams, InitializeResult } from 'vscode-languageserver-protocol';
import { codeActionKinds } from './code-actions.ts';

export class CircuitLanguageServer extends DefaultLanguageServer {
  protected override buildInitializeResult(params: InitializeParams): InitializeResult {
    const { capabilities, ...rest } = super.buildInitializeResult(params);
    return {
      ...rest,
      serverInfo: { name: 'Linewright' },
      capabilities: {
        ...capabilities,
        workspace: { ...capabilities.workspace, workspaceFolders: { supported: true, changeNotifications: true } },
        codeActionProvider: { codeActionKinds: [...codeActionKinds] },
        selectionRangeProvider: true,
      },
    };
  }
}
