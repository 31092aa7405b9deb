/** Tells what the word under the pointer is, with its figures and how each came about. */
import type { LangiumDocument } from 'langium';
import type { HoverProvider } from 'langium/lsp';
import type { Hover, HoverParams } from 'vscode-languageserver';
import { cardAt, type State, standingAt } from '../../language/index.ts';
import { cardMarkdown } from './markdown.ts';
import { rangeOf } from './positions.ts';
import type { ServerSharedServices } from './services.ts';

export class CircuitHover implements HoverProvider {
  private readonly shared: ServerSharedServices;

  constructor(shared: ServerSharedServices) {
    this.shared = shared;
  }

  getHoverContent(document: LangiumDocument, { position }: HoverParams): Hover | undefined {
    const standing = standingAt(document, document.textDocument.offsetAt(position));
    if (standing === undefined) return undefined;
    const { Readings, Judgements } = this.shared.workspace;
    const reading = Readings.readingOf(document);
    const judged = (state: State) => ({
      system: reading[state],
      get figures() {
        return Judgements.figuresOf(reading[state]);
      },
      get judgement() {
        return Judgements.of(reading, state);
      },
    });
    const state = this.shared.window.Settings.circuit();
    const card = cardAt(standing, { shown: judged(state), other: judged(state === 'planned' ? 'found' : 'planned') });
    return (
      card && {
        contents: { kind: 'markdown', value: cardMarkdown(card) },
        range: rangeOf(standing.origin, document.textDocument),
      }
    );
  }
}
