/** Exports what the search for symbols offers: vehicles, stock and the parts that stand by themselves. */
import type { LangiumDocument, LocalSymbols } from 'langium';
import { DefaultScopeComputation, MultiMap } from 'langium';

export class CircuitScopeComputation extends DefaultScopeComputation {
  /** The scope provider reads the tree itself, so nothing is gathered twice. */
  override async collectLocalSymbols(_document: LangiumDocument): Promise<LocalSymbols> {
    return new MultiMap();
  }
}
