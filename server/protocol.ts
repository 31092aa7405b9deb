/** What the language server and its window say to each other beside LSP: types and method names, nothing that runs. */
import type { Location, Position } from 'vscode-languageserver-types';

/** Window → server. Each method's name with what it takes and what it answers. */
export interface ServerRequests {
  'linewright/picture': { params: PictureParams; result: PictureAnswer };
  'linewright/locate': { params: LocateParams; result: Location | null };
  'linewright/partAt': { params: PartAtParams; result: PartAtAnswer };
  'linewright/sheet': { params: SheetParams; result: SheetAnswer };
}

/** Server → window. */
export interface ServerNotifications {
  /** The document was read again and its picture may have changed; the window pulls when it wants to. */
  'linewright/pictureChanged': PictureChangedParams;
}

/** Server → window: files that the server cannot read by itself (virtual folders, and everything in a browser). */
export interface WindowRequests {
  'linewright/fs/readFile': { params: FileParams; result: FileContent };
  'linewright/fs/stat': { params: FileParams; result: FileStat };
  'linewright/fs/readDirectory': { params: FileParams; result: DirectoryContent };
}

/** Handed over once as LSP `initializationOptions`. */
export interface InitializationOptions {
  /**
   * The URI schemes whose files the server reads by itself: `['file']` on a desktop, none in a browser.
   * For every other scheme it asks the window.
   */
  readonly ownSchemes: readonly string[];
  /**
   * The URI schemes of the documents that are worked on. A document of any other scheme (the old side of a diff, say)
   * may be opened too and is let lie: it is neither indexed nor checked.
   */
  readonly servedSchemes: readonly string[];
  /** The address of the folder that holds a page on each rule, `<code>.md`; without it findings lead to no page. */
  readonly rulePages?: string;
  /** The window has the commands that the lenses over a file lead to; without it no lens is shown. */
  readonly sheetCommands?: true;
}

/** Which of the two circuits in a file is meant. */
export type CircuitView = 'planned' | 'found';

/**
 * The colours of a picture. `vscode` carries no colours of its own, only classes and `--lw-…` variables that the
 * preview's style sheet fills; every other theme is a finished SVG file that stands alone.
 */
export type PictureTheme = 'vscode' | 'light' | 'dark' | 'high-contrast' | 'print';

export interface PictureParams {
  readonly uri: string;
  readonly circuit: CircuitView;
  readonly theme: PictureTheme;
  /** The placement of the picture now on show, unread; it keeps a small edit from throwing the picture around. */
  readonly previous?: Placement;
  /**
   * What to do while the text cannot be read whole: only say so (a good picture is on show), or draw the part that can
   * be read (there is nothing else to show).
   */
  readonly whenBroken: 'say-so' | 'draw-what-is-left';
}

/** The server's own record of where each part was placed, as text. The window stores it and hands it back unread. */
export type Placement = string;

export type PictureAnswer = DrawnPicture | BrokenText | NoPicture;

export interface DrawnPicture {
  readonly kind: 'drawn';
  readonly circuit: CircuitView;
  /** The document version that was drawn; undefined if the document is not open in the editor. */
  readonly version?: number;
  /** Complete `<svg>` element. Each drawn part and line carries its id as `data-id`. */
  readonly svg: string;
  /** One line for people, without the circuit's name: `Orchard delivery van`. */
  readonly title: string;
  /** One or two sentences that a screen reader may say instead of the picture. */
  readonly description: string;
  /** In reading order: actuation, junctions, wheels; lines after the part that they leave. */
  readonly parts: readonly PicturePart[];
  /** Both views if the file marks anything as to fit or to remove, else `planned` alone. */
  readonly views: readonly CircuitView[];
  readonly tally: PictureTally;
  readonly placement: Placement;
  /** Present if only what is left of broken text was drawn. */
  readonly broken?: BrokenPlace;
}

/** The text has a syntax error and the request asked not to draw it. */
export interface BrokenText extends BrokenPlace {
  readonly kind: 'broken';
}

export interface BrokenPlace {
  readonly message: string;
  /** The first place where reading failed. */
  readonly location: Location;
}

/** There is nothing to draw, and why: an unknown document, no parts yet, too large to place. In words for people. */
export interface NoPicture {
  readonly kind: 'none';
  readonly reason: 'unknown-document' | 'empty' | 'too-large' | 'failed';
  readonly message: string;
}

export interface PicturePart {
  /** The part's path, unique in the picture: `rear-left`, `main-to-front-tee`. Equals `data-id` in the SVG. */
  readonly id: string;
  readonly kind: 'part' | 'line';
  /** The kind in words of the trade: `drum brake`, `hose`. */
  readonly trade: string;
  readonly label: string;
  /** The numbers that the picture and the hover show for it, formatted the same way; may be empty. */
  readonly description: string;
  /** The ids that it is joined to directly: a line's two ends, a part's lines. */
  readonly joined: readonly string[];
  /** The findings on it, worst first, as the sentences of the diagnostics. */
  readonly findings: readonly PictureFinding[];
}

export interface PictureFinding {
  /** A question is something to measure or to look at. */
  readonly severity: 'error' | 'warning' | 'information' | 'question';
  readonly message: string;
}

export interface PictureTally {
  readonly errors: number;
  readonly warnings: number;
  /** How many values still have to be measured. */
  readonly toMeasure: number;
}

export interface PictureChangedParams {
  readonly uri: string;
  readonly version?: number;
}

/** Where a part of the picture is declared in the text as it is now; null if it is gone. */
export interface LocateParams {
  readonly uri: string;
  readonly id: string;
}

/** Which part of the picture the cursor stands in. */
export interface PartAtParams {
  readonly uri: string;
  readonly position: Position;
}

export interface PartAtAnswer {
  /** Undefined between declarations and in declarations that are not drawn. */
  readonly id?: string;
}

/** The sheets for the bench: the lines to make, the parts to buy, the things to measure. */
export type SheetName = 'lines' | 'parts' | 'measure';

export interface SheetParams {
  readonly uri: string;
  readonly sheet: SheetName;
  readonly circuit: CircuitView;
  /** `html` is a whole page that prints; `body` is what stands on it, for a page that brings its own style. */
  readonly format: 'html' | 'body' | 'markdown' | 'csv';
}

/** The sheet, or in words for people why there is none. */
export type SheetAnswer = MadeSheet | { readonly kind: 'none'; readonly problem: string };

export interface MadeSheet {
  readonly kind: 'made';
  readonly text: string;
  /** `Lines to make` */
  readonly title: string;
  /** Both views if the file marks anything as to fit or to remove, else `planned` alone. */
  readonly views: readonly CircuitView[];
}

export interface FileParams {
  readonly uri: string;
}

export type FileContent =
  | { readonly kind: 'text'; readonly text: string }
  | { readonly kind: 'missing' }
  /** There, but not to be read as text: a directory, binary, too large, or no permission; the reason in plain words. */
  | { readonly kind: 'unreadable'; readonly reason: string };

export type FileStat = { readonly kind: 'file' | 'directory' | 'missing' };

export interface DirectoryContent {
  /** Empty if the directory is missing or cannot be read. */
  readonly entries: readonly DirectoryEntry[];
}

export interface DirectoryEntry {
  readonly name: string;
  readonly kind: 'file' | 'directory';
}
