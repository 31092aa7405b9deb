/** What a sheet for the bench holds, apart from how it is printed. */

/** A box to tick by hand; `done` is ticked already, since the file records it. */
export type Tick = 'open' | 'done';

export interface Column {
  readonly title: string;
  readonly align: 'left' | 'right';
}

export interface Row {
  readonly tick?: Tick;
  /** One text for each column. */
  readonly cells: readonly string[];
}

export interface Item {
  readonly tick?: Tick;
  readonly text: string;
  /** Smaller lines beneath it. */
  readonly details?: readonly string[];
}

export type Block =
  /** Printed on one page where it fits. */
  | { readonly kind: 'section'; readonly title: string; readonly tick?: Tick; readonly blocks: readonly Block[] }
  | { readonly kind: 'paragraph'; readonly text: string }
  | { readonly kind: 'table'; readonly columns: readonly Column[]; readonly rows: readonly Row[] }
  | { readonly kind: 'list'; readonly items: readonly Item[] }
  /** Numbered, in the order of work. */
  | { readonly kind: 'steps'; readonly items: readonly Item[] }
  | { readonly kind: 'facts'; readonly rows: readonly (readonly [name: string, value: string])[] }
  /** `alternative` says in words what the drawing shows; `svg` is a complete element without style attributes. */
  | { readonly kind: 'drawing'; readonly alternative: string; readonly svg: string };

/** A value that JSON can carry; quantities are SI numbers whose names end in their unit: `cutLengthMetres`. */
export type Data = null | boolean | number | string | readonly Data[] | { readonly [name: string]: Data };

export interface Sheet {
  /** `lines`, `parts`, `measure`: the word that asks for it. */
  readonly id: string;
  /** "Lines to make" */
  readonly title: string;
  /** "Orchard delivery van, as planned" */
  readonly subtitle: string;
  /** The usual cautions, short; every sheet that tells someone how to work on brakes has some. */
  readonly cautions: readonly string[];
  readonly blocks: readonly Block[];
  /** The same for machines. */
  readonly data: Data;
  /** The rows for a spreadsheet, where the sheet is a list. */
  readonly list?: { readonly columns: readonly string[]; readonly rows: readonly (readonly string[])[] };
}

export const left = (title: string): Column => ({ title, align: 'left' });
export const right = (title: string): Column => ({ title, align: 'right' });
