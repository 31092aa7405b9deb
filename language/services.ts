/** The language's services without an editor: parser, scoping, linking, what a file uses. */
import type {
  DeepPartial,
  DefaultSharedCoreModuleContext,
  LangiumCoreServices,
  LangiumSharedCoreServices,
  Module,
} from 'langium';
import { createDefaultCoreModule, createDefaultSharedCoreModule, EmptyFileSystem, inject } from 'langium';
import { LinewrightGeneratedModule, LinewrightGeneratedSharedModule } from './grammar/generated/module.ts';
import { CircuitTokenBuilder } from './grammar/token-builder.ts';

/** What every host lays over Langium's defaults, with an editor or without one. */
export const circuitModule = {
  parser: {
    TokenBuilder: () => new CircuitTokenBuilder(),
  },
} satisfies Module<LangiumCoreServices, DeepPartial<LangiumCoreServices>>;

export interface Services {
  readonly shared: LangiumSharedCoreServices;
  readonly language: LangiumCoreServices;
}

/** Services for a host without an editor; without a file system nothing outside the given documents is read. */
export function createLinewrightServices(context: DefaultSharedCoreModuleContext = EmptyFileSystem): Services {
  const shared = inject(createDefaultSharedCoreModule(context), LinewrightGeneratedSharedModule);
  const language = inject(createDefaultCoreModule({ shared }), LinewrightGeneratedModule, circuitModule);
  shared.ServiceRegistry.register(language);
  return { shared, language };
}
