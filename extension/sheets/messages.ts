/** What a sheet's host and its page say to each other. */
import type { CircuitView } from '../../server/protocol.ts';
import type { SheetSubject } from './state.ts';

export type ToSheetPage =
  /** Answer to `ready`: the words to show, and which sheet of which document is meant. */
  | { readonly type: 'start'; readonly words: SheetWords; readonly subject: SheetSubject }
  | {
      readonly type: 'sheet';
      /** Markup of the sheet, made by the server. */
      readonly body: string;
      readonly title: string;
      readonly circuit: CircuitView;
      readonly views: readonly CircuitView[];
    }
  /** No sheet could be made; one on show is kept and is not of now. */
  | { readonly type: 'trouble'; readonly message: string };

export type ToSheetHost =
  | { readonly type: 'ready' }
  | { readonly type: 'circuit'; readonly circuit: CircuitView }
  | { readonly type: 'print' }
  | { readonly type: 'save' }
  | { readonly type: 'focusEditor' };

/** Everything that the page says by itself, in the reader's language. */
export interface SheetWords {
  readonly tools: string;
  readonly circuit: string;
  readonly planned: string;
  readonly found: string;
  readonly print: string;
  readonly printHint: string;
  readonly save: string;
  readonly waiting: string;
}
