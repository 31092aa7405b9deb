/** What differs between the desktop and the browser: how the server is started and which files it reads itself. */
import type { BaseLanguageClient, LanguageClientOptions } from 'vscode-languageclient';

export interface Platform {
  readonly ownSchemes: readonly string[];
  readonly createClient: (id: string, name: string, options: LanguageClientOptions) => Promise<CreatedClient>;
}

export interface CreatedClient {
  readonly client: BaseLanguageClient;
  /** Gives back what the client does not end by itself. */
  readonly release: () => void;
}
