/** Entry point of the language server in a browser's worker; every file comes through the window. */
import { BrowserMessageReader, BrowserMessageWriter, createConnection } from 'vscode-languageserver/browser';
import { inlineEngine } from './layout/inline.ts';
import { startServer } from './start.ts';

declare const self: ConstructorParameters<typeof BrowserMessageReader>[0] &
  ConstructorParameters<typeof BrowserMessageWriter>[0];

// In the first tick, so that no message of the window comes too early.
const connection = createConnection(new BrowserMessageReader(self), new BrowserMessageWriter(self));
startServer(connection, { ownFiles: new Map(), engine: inlineEngine() });
