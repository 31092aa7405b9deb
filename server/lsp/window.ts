/** What the window says of itself when it greets the server. */
import type { LangiumSharedServices } from 'langium/lsp';
import type { InitializeParams } from 'vscode-languageserver-protocol';
import { ruleOf } from '../../language/index.ts';

export interface Window {
  /** The address of a rule's page; undefined for a code that is no rule's, or without pages. */
  pageOf(code: string): string | undefined;
  /** Edits may name the version of the document that they are made for. */
  versionedEdits(): boolean;
  /** Documents of these schemes are worked on, all others are let lie. */
  serves(scheme: string): boolean;
  /** It reports changes of files by itself. */
  watchesFiles(): boolean;
  /** It has the commands that the lenses over a file lead to. */
  sheetCommands(): boolean;
  /** It asks for lenses, or for lengths in the text, again when it is told to. */
  refreshesLenses(): boolean;
  refreshesInlays(): boolean;
}

const usualSchemes: readonly string[] = ['file', 'untitled', 'vscode-vfs', 'vscode-remote', 'vscode-test-web'];

export function windowOf({ lsp }: LangiumSharedServices): Window {
  const kept: { params: InitializeParams | undefined } = { params: undefined };
  lsp.LanguageServer.onInitialize((params) => {
    kept.params = params;
  });
  const option = (name: string): unknown => {
    const options: unknown = kept.params?.initializationOptions;
    return typeof options === 'object' && options !== null ? Reflect.get(options, name) : undefined;
  };
  return {
    pageOf: (code) => {
      const pages = option('rulePages');
      const isAddress = typeof pages === 'string' && /^(file|https|vscode-[\w-]+):/.test(pages);
      return isAddress && ruleOf(code) !== undefined ? `${pages}/${code}.md` : undefined;
    },
    versionedEdits: () => kept.params?.capabilities.workspace?.workspaceEdit?.documentChanges === true,
    serves: (scheme) => {
      const schemes = option('servedSchemes');
      return (Array.isArray(schemes) ? schemes : usualSchemes).includes(scheme);
    },
    watchesFiles: () => Array.isArray(option('servedSchemes')),
    sheetCommands: () => option('sheetCommands') === true,
    refreshesLenses: () => kept.params?.capabilities.workspace?.codeLens?.refreshSupport === true,
    refreshesInlays: () => kept.params?.capabilities.workspace?.inlayHint?.refreshSupport === true,
  };
}
