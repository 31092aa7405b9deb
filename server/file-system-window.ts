/** Asks the window for files that the server cannot read by itself. */
import type { Connection } from 'vscode-languageserver';
import type { Files } from './file-system.ts';
import type { WindowRequests } from './protocol.ts';

export function windowFiles(connection: Connection): Files {
  const ask = <M extends keyof WindowRequests>(
    method: M,
    params: WindowRequests[M]['params'],
  ): Promise<WindowRequests[M]['result']> => connection.sendRequest<WindowRequests[M]['result']>(method, params);
  return {
    stat: async (uri) => {
      const { kind } = await ask('linewright/fs/stat', { uri: uri.toString() });
      if (kind === 'missing') throw new Error('This file is not there.');
      return { isFile: kind === 'file', isDirectory: kind === 'directory', uri };
    },
    readFile: async (uri) => {
      const content = await ask('linewright/fs/readFile', { uri: uri.toString() });
      if (content.kind === 'missing') throw new Error('This file is not there.');
      if (content.kind === 'unreadable') throw new Error(content.reason);
      return content.text;
    },
    readDirectory: async (uri) => {
      const { entries } = await ask('linewright/fs/readDirectory', { uri: uri.toString() });
      return entries.map(({ name, kind }) => ({
        isFile: kind === 'file',
        isDirectory: kind === 'directory',
        // The root of a virtual folder may have no path at all.
        uri: uri.with({ path: `${uri.path.replace(/\/$/, '')}/${name}` }),
      }));
    },
  };
}
