/** The services of the language with an editor at the other end of a connection. */
import { type DeepPartial, type DefaultSharedCoreModuleContext, inject, type Module } from 'langium';
import {
  createDefaultModule,
  createDefaultSharedModule,
  type LangiumServices,
  type LangiumSharedServices,
  type PartialLangiumServices,
} from 'langium/lsp';
import type { Connection } from 'vscode-languageserver';
import {
  type CircuitSharedAddition,
  circuitModule,
  circuitSharedModule,
  LinewrightGeneratedModule,
  LinewrightGeneratedSharedModule,
  Renaming,
} from '../../language/index.ts';
import { DocumentLife } from '../documents.ts';
import { CircuitCodeActions } from './code-actions.ts';
import { CircuitLenses } from './code-lenses.ts';
import { CircuitCompletion } from './completion.ts';
import { CircuitLinks } from './document-links.ts';
import { CircuitFormatter } from './formatting.ts';
import { CircuitHover } from './hover.ts';
import { CircuitInlays } from './inlay-hints.ts';
import { CircuitLanguageServer } from './language-server.ts';
import { LateCompletionParser } from './late-completion-parser.ts';
import { OpenFolders } from './open-folders.ts';
import { CircuitRename } from './rename.ts';
import { CircuitSemanticTokens } from './semantic-tokens.ts';
import { followSettings, type Settings } from './settings.ts';
import { Sheets } from './sheets.ts';
import { CircuitOutline, CircuitSymbolKinds } from './symbols.ts';
import { CircuitValidator } from './validator.ts';
import { type Window, windowOf } from './window.ts';

export interface ServerSharedAddition {
  readonly workspace: { readonly WorkspaceManager: OpenFolders };
  readonly lsp: { readonly DocumentUpdateHandler: DocumentLife };
  readonly window: {
    readonly Settings: Settings;
    readonly Window: Window;
    readonly Sheets: Sheets;
  };
}

export type ServerSharedServices = LangiumSharedServices & CircuitSharedAddition & ServerSharedAddition;

export interface ServerServices {
  readonly shared: ServerSharedServices;
  readonly language: LangiumServices;
}

export interface ServerContext extends DefaultSharedCoreModuleContext {
  readonly connection: Connection;
}

const serverSharedModule = {
  lsp: {
    LanguageServer: (services: ServerSharedServices) => new CircuitLanguageServer(services),
    NodeKindProvider: () => new CircuitSymbolKinds(),
    DocumentUpdateHandler: (services: ServerSharedServices) => new DocumentLife(services),
  },
  workspace: {
    WorkspaceManager: (services: ServerSharedServices) => new OpenFolders(services),
  },
  window: {
    Settings: (services: ServerSharedServices) =>
      followSettings(services, () => {
        services.workspace.DocumentBuilder.forgetChecks();
        void services.lsp.DocumentUpdateHandler.take({});
      }),
    Window: (services: ServerSharedServices) => windowOf(services),
    Sheets: (services: ServerSharedServices) => new Sheets(services),
  },
} satisfies Module<ServerSharedServices, DeepPartial<ServerSharedServices>>;

function serverModule(shared: ServerSharedServices) {
  return {
    parser: {
      CompletionParser: (services: LangiumServices) => new LateCompletionParser(services),
    },
    validation: {
      DocumentValidator: (services: LangiumServices) => new CircuitValidator(services, shared),
    },
    lsp: {
      CodeActionProvider: () => new CircuitCodeActions(shared),
      CodeLensProvider: () => new CircuitLenses(shared),
      CompletionProvider: (services: LangiumServices) => new CircuitCompletion(services, shared),
      DocumentLinkProvider: () => new CircuitLinks(shared),
      DocumentSymbolProvider: () => new CircuitOutline(),
      Formatter: (services: LangiumServices) =>
        new CircuitFormatter(
          () => services.parser.Lexer,
          (document) => shared.workspace.LangiumDocumentFactory.refusal(document) !== undefined,
        ),
      HoverProvider: () => new CircuitHover(shared),
      InlayHintProvider: () => new CircuitInlays(shared),
      RenameProvider: (services: LangiumServices) =>
        new CircuitRename(new Renaming(services, () => shared.workspace.UsedFiles), shared),
      SemanticTokenProvider: () => new CircuitSemanticTokens(),
    },
  } satisfies Module<LangiumServices, PartialLangiumServices>;
}

export function createServerServices(context: ServerContext): ServerServices {
  const shared: ServerSharedServices = inject(
    createDefaultSharedModule(context),
    LinewrightGeneratedSharedModule,
    circuitSharedModule,
    serverSharedModule,
  );
  const language = inject(
    createDefaultModule({ shared }),
    LinewrightGeneratedModule,
    circuitModule(shared),
    serverModule(shared),
  );
  shared.ServiceRegistry.register(language);
  return { shared, language };
}
