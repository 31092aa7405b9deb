/** A line of links over a circuit file: its sheets with how much stands on each, and its schematic. */
import type { LangiumDocument } from 'langium';
import type { CodeLensProvider } from 'langium/lsp';
import type { CodeLens } from 'vscode-languageserver-types';
import type { SheetName } from '../protocol.ts';
import type { ServerSharedServices } from './services.ts';

const links: readonly { readonly sheet: SheetName; readonly title: string; readonly command: string }[] = [
  { sheet: 'lines', title: 'Lines to make', command: 'linewright.showLinesSheet' },
  { sheet: 'parts', title: 'Parts to buy', command: 'linewright.showPartsSheet' },
  { sheet: 'measure', title: 'To measure', command: 'linewright.showMeasureSheet' },
];

export class CircuitLenses implements CodeLensProvider {
  private readonly shared: ServerSharedServices;

  constructor(shared: ServerSharedServices) {
    this.shared = shared;
  }

  provideCodeLens(document: LangiumDocument): CodeLens[] {
    const { Settings, Window, Sheets } = this.shared.window;
    if (!Settings.sheetLens() || !Window.sheetCommands()) return [];
    const { Readings, LangiumDocumentFactory } = this.shared.workspace;
    const circuit = Settings.circuit();
    // Stock alone is no circuit: nothing of it is made or bought.
    if (LangiumDocumentFactory.refusal(document) !== undefined) return [];
    if (Readings.readingOf(document)[circuit].parts.length === 0) return [];
    const start = { line: 0, character: 0 };
    const range = { start, end: start };
    const args = [document.uri.toString()];
    const counted = links.map(({ sheet, title, command }): CodeLens => {
      const count = Sheets.openRows(document, { sheet, circuit });
      return { range, command: { title: `${title} (${count})`, command, arguments: args } };
    });
    return [
      ...counted,
      { range, command: { title: 'Schematic', command: 'linewright.showPreviewToSide', arguments: args } },
    ];
  }
}
