/** Behind the name of each run the length to cut it to, where it is known. */
import type { LangiumDocument } from 'langium';
import type { InlayHintProvider } from 'langium/lsp';
import type { InlayHintParams } from 'vscode-languageserver';
import type { InlayHint } from 'vscode-languageserver-types';
import { cutWords, explainFigure } from '../../language/index.ts';
import { escaped } from './markdown.ts';
import type { ServerSharedServices } from './services.ts';

/** Why the number may be a little more than the figure. */
const rounding =
  'As on the lines sheet: the longest that the limits of the route allow, up to the next mark of the tape.';

export class CircuitInlays implements InlayHintProvider {
  private readonly shared: ServerSharedServices;

  constructor(shared: ServerSharedServices) {
    this.shared = shared;
  }

  getInlayHints(document: LangiumDocument, { range }: InlayHintParams): InlayHint[] {
    const { Readings, Judgements, LangiumDocumentFactory } = this.shared.workspace;
    const { Settings } = this.shared.window;
    if (!Settings.inlayLengths() || LangiumDocumentFactory.refusal(document) !== undefined) return [];
    const system = Readings.readingOf(document)[Settings.circuit()];
    const figures = Judgements.figuresOf(system);
    const uri = document.uri.toString();
    const text = document.textDocument;
    const [start, end] = [text.offsetAt(range.start), text.offsetAt(range.end)];
    return [...system.partById.values()]
      .filter(({ kind, nameOrigin }) => kind === 'run' && nameOrigin.uri === uri)
      .filter(({ nameOrigin }) => start <= nameOrigin.end && nameOrigin.end <= end)
      .flatMap((run): readonly InlayHint[] => {
        const words = cutWords(run, system, figures);
        const figure = figures.find(run.id, 'run.cut-length');
        if (words === undefined || figure === undefined) return [];
        const account = explainFigure(figure).map((line) => `- ${escaped(line.text)}`);
        return [
          {
            position: text.positionAt(run.nameOrigin.end),
            label: `cut ${words}`,
            paddingLeft: true,
            tooltip: { kind: 'markdown', value: [`${escaped(rounding)}\n`, ...account].join('\n') },
          },
        ];
      })
      .sort((a, b) => a.position.line - b.position.line || a.position.character - b.position.character);
  }
}
