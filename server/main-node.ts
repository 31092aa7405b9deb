/** Entry point of the language server on Node: stdio, IPC, a pipe or a socket, as the window asks. */
import { join } from 'node:path';
import { createConnection, ProposedFeatures } from 'vscode-languageserver/node';
import { nodeFiles } from './file-system-node.ts';
import { threadEngine } from './layout/thread.ts';
import { startServer } from './start.ts';

startServer(createConnection(ProposedFeatures.all), {
  ownFiles: new Map([['file', nodeFiles]]),
  engine: threadEngine({ script: join(__dirname, 'layout-worker.cjs') }),
});
