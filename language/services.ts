/** The language's services without an editor: parser, scoping, linking, what a file uses and what it says. */
import type {
  DeepPartial,
  DefaultSharedCoreModuleContext,
  LangiumCoreServices,
  LangiumSharedCoreServices,
  Module,
} from 'langium';
import { createDefaultCoreModule, createDefaultSharedCoreModule, EmptyFileSystem, inject } from 'langium';
import { LinewrightGeneratedModule, LinewrightGeneratedSharedModule } from './grammar/generated/module.ts';
import { CircuitLexer } from './grammar/lexer.ts';
import { LexerMessages, ParserMessages } from './grammar/parse-messages.ts';
import { CircuitTokenBuilder } from './grammar/token-builder.ts';
import { CircuitNameProvider } from './scoping/names.ts';
import { CircuitScopeComputation } from './scoping/scope-computation.ts';
import { CircuitScopeProvider } from './scoping/scope-provider.ts';
import { vocabulary } from './scoping/vocabulary.ts';
import { CircuitDocumentBuilder } from './workspace/document-builder.ts';
import { CircuitDocumentFactory } from './workspace/document-factory.ts';
import { CircuitIndexManager } from './workspace/document-index.ts';
import { CircuitDocuments } from './workspace/documents.ts';
import { Judgements } from './workspace/judgements.ts';
import { Readings } from './workspace/readings.ts';
import { CircuitServiceRegistry } from './workspace/service-registry.ts';
import { UsedFiles } from './workspace/used-files.ts';

/** What the language adds to Langium's shared services. */
export interface CircuitSharedAddition {
  readonly workspace: {
    readonly LangiumDocumentFactory: CircuitDocumentFactory;
    readonly DocumentBuilder: CircuitDocumentBuilder;
    readonly UsedFiles: UsedFiles;
    readonly Readings: Readings;
    readonly Judgements: Judgements;
  };
}

export type CircuitSharedServices = LangiumSharedCoreServices & CircuitSharedAddition;

/** What every host lays over Langium's defaults for the language, with an editor or without one. */
export function circuitModule(shared: CircuitSharedServices) {
  return {
    parser: {
      TokenBuilder: () => new CircuitTokenBuilder(),
      Lexer: (services: LangiumCoreServices) => new CircuitLexer(services, vocabulary),
      ParserErrorMessageProvider: () => new ParserMessages(vocabulary),
      LexerErrorMessageProvider: () => new LexerMessages(),
    },
    references: {
      NameProvider: () => new CircuitNameProvider(),
      ScopeComputation: (services: LangiumCoreServices) => new CircuitScopeComputation(services),
      ScopeProvider: (services: LangiumCoreServices) =>
        new CircuitScopeProvider(services, () => shared.workspace.UsedFiles),
    },
  } satisfies Module<LangiumCoreServices, DeepPartial<LangiumCoreServices>>;
}

/** The same for what documents share. */
export const circuitSharedModule = {
  ServiceRegistry: (services: CircuitSharedServices) => new CircuitServiceRegistry(services),
  workspace: {
    LangiumDocumentFactory: (services: CircuitSharedServices) => new CircuitDocumentFactory(services),
    LangiumDocuments: (services: CircuitSharedServices) => new CircuitDocuments(services),
    DocumentBuilder: (services: CircuitSharedServices) =>
      new CircuitDocumentBuilder(services, () => services.workspace.UsedFiles),
    IndexManager: (services: CircuitSharedServices) =>
      new CircuitIndexManager(services, () => services.workspace.UsedFiles),
    UsedFiles: (services: CircuitSharedServices) =>
      new UsedFiles(services, (document) => services.workspace.LangiumDocumentFactory.refusal(document)),
    Readings: (services: CircuitSharedServices) => new Readings(services.workspace.UsedFiles),
    Judgements: () => new Judgements(),
  },
} satisfies Module<CircuitSharedServices, DeepPartial<CircuitSharedServices>>;

export interface Services {
  readonly shared: CircuitSharedServices;
  readonly language: LangiumCoreServices;
}

/** Services for a host without an editor; without a file system nothing outside the given documents is read. */
export function createLinewrightServices(context: DefaultSharedCoreModuleContext = EmptyFileSystem): Services {
  const shared: CircuitSharedServices = inject(
    createDefaultSharedCoreModule(context),
    LinewrightGeneratedSharedModule,
    circuitSharedModule,
  );
  const language = inject(createDefaultCoreModule({ shared }), LinewrightGeneratedModule, circuitModule(shared));
  shared.ServiceRegistry.register(language);
  return { shared, language };
}
