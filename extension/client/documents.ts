/** Which documents are ours: the language, the file ending, and the schemes that the server works on. */
export const languageId = 'linewright';

export const filePattern = '**/*.circuit';

/** Not `git`: the old side of a diff gets its colours from the grammar and is otherwise let lie. */
export const servedSchemes: readonly string[] = [
  'file',
  'untitled',
  'vscode-remote',
  'vscode-vfs',
  'vscode-test-web',
  'vsls',
];

export const documentSelector = servedSchemes.map((scheme) => ({ language: languageId, scheme }));

export interface DocumentLike {
  readonly languageId: string;
  readonly uri: { readonly scheme: string };
}

export function isServed(document: DocumentLike): boolean {
  return document.languageId === languageId && servedSchemes.includes(document.uri.scheme);
}
