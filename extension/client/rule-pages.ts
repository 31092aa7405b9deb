/** The pages that explain the rules: shipped with the extension, and shown as pages rather than as text. */
import { commands, type Diagnostic, Uri, window } from 'vscode';

export function rulePages(extensionUri: Uri): Uri {
  return Uri.joinPath(extensionUri, 'language/rules/pages');
}

/** Lets the code of a finding lead to its page by our command; a plain address would open the page's source. */
export function leadingToCommand(diagnostic: Diagnostic): Diagnostic {
  const { code } = diagnostic;
  if (typeof code !== 'object') return diagnostic;
  const query = encodeURIComponent(JSON.stringify([code.value]));
  diagnostic.code = { value: code.value, target: Uri.parse(`command:linewright.explainRule?${query}`) };
  return diagnostic;
}

export async function explainRule(extensionUri: Uri, code: unknown): Promise<void> {
  if (typeof code !== 'string' || !/^[a-z]+(-[a-z]+)*$/.test(code)) return;
  const page = Uri.joinPath(rulePages(extensionUri), `${code}.md`);
  try {
    await commands.executeCommand('markdown.showPreview', page);
  } catch {
    // An editor without Markdown pages still shows text.
    await window.showTextDocument(page);
  }
}
