/** Offers what fits at the cursor: the grammar says which words may come, the language which of them make sense there. */
import { AstUtils, GrammarAST, type LangiumDocument } from 'langium';
import {
  type CompletionAcceptor,
  type CompletionBacktrackingInformation,
  type CompletionContext,
  type CompletionProviderOptions,
  DefaultCompletionProvider,
  type LangiumServices,
  type NextFeature,
} from 'langium/lsp';
import { CompletionItemKind, type CompletionList, type CompletionParams } from 'vscode-languageserver';
import { TextDocument } from 'vscode-languageserver-textdocument';
import {
  type Block,
  blockAt,
  declarationStart,
  type FileReading,
  lendingsOf,
  type Offer,
  type OfferSite,
  offersFor,
  partIdOf,
  type State,
  type System,
  type Wanted,
} from '../../language/index.ts';
import type { ServerSharedServices } from './services.ts';

const kinds: Readonly<Record<Offer['kind'], CompletionItemKind>> = {
  part: CompletionItemKind.Variable,
  port: CompletionItemKind.Interface,
  kind: CompletionItemKind.Class,
  fact: CompletionItemKind.Property,
  word: CompletionItemKind.EnumMember,
  unit: CompletionItemKind.Unit,
  stock: CompletionItemKind.Struct,
  place: CompletionItemKind.Module,
  rule: CompletionItemKind.Event,
  keyword: CompletionItemKind.Keyword,
  thread: CompletionItemKind.Value,
};

/** Deeper than any vehicle; the parser of completion goes no further. */
const deepest = 60;

/** More of a line than this tells nothing more about the word that is being written. */
const mostBefore = 400;

export class CircuitCompletion extends DefaultCompletionProvider {
  override readonly completionOptions: CompletionProviderOptions = { triggerCharacters: ['.', ' ', ':'] };
  private readonly shared: ServerSharedServices;
  /** What is known of the place of each request while it is answered. */
  private readonly sites = new WeakMap<CompletionContext, OfferSite>();
  /** Where the declaration begins that the cursor is in; the text before it is not gone through. */
  private readonly starts = new WeakMap<TextDocument, number>();

  constructor(services: LangiumServices, shared: ServerSharedServices) {
    super(services);
    this.shared = shared;
  }

  override async getCompletion(
    document: LangiumDocument,
    params: CompletionParams,
  ): Promise<CompletionList | undefined> {
    const offset = document.textDocument.offsetAt(params.position);
    if (this.shared.workspace.LangiumDocumentFactory.refusal(document) !== undefined) return undefined;
    if (isInWords(document.textDocument.getText(), offset)) return undefined;
    const start = declarationStart(document, offset);
    if (depthIn(document.textDocument.getText().slice(start, offset)) > deepest) return undefined;
    this.starts.set(document.textDocument, start);
    return super.getCompletion(document, params);
  }

  protected override findFeaturesAt(text: TextDocument, offset: number): NextFeature[] {
    const start = this.starts.get(text) ?? 0;
    const slice = text.getText({ start: text.positionAt(Math.min(start, offset)), end: text.positionAt(offset) });
    return super.findFeaturesAt(TextDocument.create(text.uri, text.languageId, text.version, slice), slice.length);
  }

  /** The words around the cursor as they stand, before anything is mended. */
  protected override backtrackToAnyToken(text: string, offset: number): CompletionBacktrackingInformation {
    const lineStart = text.lastIndexOf('\n', offset - 1) + 1;
    const from = text.lastIndexOf('\n', Math.max(0, lineStart - 2)) + 1;
    const lineEnd = text.indexOf('\n', offset);
    const slice = text.slice(from, lineEnd < 0 ? text.length : lineEnd);
    const found = this.lexer.tokenize(slice, { mode: 'partial' }).tokens;
    const tokens = found.map(({ startOffset, image }) => ({
      start: from + startOffset,
      end: from + startOffset + image.length,
    }));
    const before = tokens.findLast(({ end }) => end <= offset && end > 0);
    const around = tokens.find(({ start, end }) => start < offset && offset < end);
    const previous = around === undefined ? before : tokens[tokens.indexOf(around) - 1];
    return {
      nextTokenStart: around?.start ?? offset,
      nextTokenEnd: around?.end ?? offset,
      ...(previous === undefined ? {} : { previousTokenStart: previous.start, previousTokenEnd: previous.end }),
    };
  }

  protected override completionFor(context: CompletionContext, next: NextFeature, accept: CompletionAcceptor): void {
    const wanted = wantedOf(next);
    if (wanted === undefined) return;
    for (const offer of offersFor(wanted, this.siteOf(context))) {
      accept(context, {
        label: offer.label,
        kind: kinds[offer.kind],
        sortText: `${offer.rank.toFixed(3).padStart(6, '0')} ${offer.label}`,
        ...(offer.detail === undefined || offer.detail === '' ? {} : { detail: offer.detail }),
        ...(offer.documentation === undefined || offer.documentation === ''
          ? {}
          : { documentation: offer.documentation }),
      });
    }
  }

  /** Several readings of the text before the cursor may be right; all of them count. */
  protected override continueCompletion(): boolean {
    return true;
  }

  private siteOf(context: CompletionContext): OfferSite {
    const known = this.sites.get(context);
    if (known !== undefined) return known;
    const { document, textDocument, tokenOffset } = context;
    const text = textDocument.getText();
    const reading = this.shared.workspace.Readings.readingOf(document);
    const block = blockAt(document, tokenOffset);
    const site: OfferSite = {
      block,
      lineBefore: text.slice(
        Math.max(text.lastIndexOf('\n', tokenOffset - 1) + 1, tokenOffset - mostBefore),
        tokenOffset,
      ),
      system: systemWith(block, reading, this.shared.window.Settings.circuit()),
      lendings: lendingsOf(document, this.shared.workspace.UsedFiles),
    };
    this.sites.set(context, site);
    return site;
  }
}

/** The circuit in the state that is asked for, or in the other one where the part at hand is in that alone. */
function systemWith(block: Block, reading: FileReading, state: State): System {
  const path = block.kind === 'part' || block.kind === 'end' ? block.path : undefined;
  const other = reading[state === 'planned' ? 'found' : 'planned'];
  const id = path === undefined ? undefined : partIdOf(path.split('.'));
  const isThereOnly = id !== undefined && !reading[state].partById.has(id) && other.partById.has(id);
  return isThereOnly ? other : reading[state];
}

function wantedOf({ feature, property }: NextFeature): Wanted | undefined {
  const rule = AstUtils.getContainerOfType(feature, GrammarAST.isParserRule)?.name ?? '';
  const assigned = AstUtils.getContainerOfType(feature, GrammarAST.isAssignment)?.feature ?? property;
  if (GrammarAST.isKeyword(feature)) return { kind: 'keyword', word: feature.value, rule };
  if (GrammarAST.isCrossReference(feature)) return { kind: 'name', rule, property: assigned ?? '' };
  const called = GrammarAST.isRuleCall(feature) ? feature.rule.ref : undefined;
  if (called === undefined || !GrammarAST.isTerminalRule(called)) return undefined;
  return { kind: 'terminal', name: called.name, rule, property: assigned };
}

/** How deep the braces of a text stand in one another. */
function depthIn(text: string): number {
  let depth = 0;
  let most = 0;
  for (const [brace] of text.matchAll(/[{}]/g)) {
    depth += brace === '{' ? 1 : -1;
    most = Math.max(most, depth);
  }
  return most;
}

/** Whether the cursor is in a comment or a text in quotes, where nothing is offered. */
function isInWords(text: string, offset: number): boolean {
  const line = text.slice(text.lastIndexOf('\n', offset - 1) + 1, offset);
  const outsideQuotes = line.replace(/"(?:\\.|[^"\\])*"/g, '');
  if (outsideQuotes.includes('"') || outsideQuotes.includes('//')) return true;
  const opened = text.lastIndexOf('/*', offset - 1);
  return opened >= 0 && text.indexOf('*/', opened) + 2 > offset && !text.slice(opened, offset).includes('*/');
}
