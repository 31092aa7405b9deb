/** The mends of problems and findings as quick fixes, and the safe ones of a whole file together for fix-on-save. */
import type { LangiumDocument } from 'langium';
import type { CodeActionProvider } from 'langium/lsp';
import { type CodeAction, CodeActionKind, type CodeActionParams } from 'vscode-languageserver';
import type { TextEdit, WorkspaceEdit } from 'vscode-languageserver-types';
import { acceptMend, type Finding, isAcceptable, type Mend, openEnds, textProblems } from '../../language/index.ts';
import { touches } from './diagnostics.ts';
import { locationOf } from './positions.ts';
import type { ServerSharedServices } from './services.ts';

const fixAll = `${CodeActionKind.SourceFixAll}.linewright`;
export const codeActionKinds: readonly string[] = [CodeActionKind.QuickFix, fixAll];

/** Something with mends at a place: a problem of the text or a finding. */
interface Mendable {
  readonly code: string;
  readonly message: string;
  readonly origin: Mend['edits'][number];
  readonly mends: readonly Mend[];
}

export class CircuitCodeActions implements CodeActionProvider {
  private readonly shared: ServerSharedServices;

  constructor(shared: ServerSharedServices) {
    this.shared = shared;
  }

  /** Made from the document as it is, never from what diagnostics remember of it. */
  getCodeActions(document: LangiumDocument, params: CodeActionParams): CodeAction[] {
    if (this.shared.workspace.LangiumDocumentFactory.refusal(document) !== undefined) return [];
    const wants = (kind: string): boolean =>
      params.context.only?.some((only) => kind === only || kind.startsWith(`${only}.`)) ??
      kind === CodeActionKind.QuickFix;
    const all = this.mendables(document);
    return [
      ...(wants(CodeActionKind.QuickFix)
        ? this.quickFixes([...all, ...this.otherEnds(document)], document, params)
        : []),
      ...(wants(fixAll) ? this.fixAllSafe(all) : []),
    ];
  }

  private mendables(document: LangiumDocument): readonly Mendable[] {
    const { Readings, Judgements } = this.shared.workspace;
    const { findings } = Judgements.of(Readings.readingOf(document), this.shared.window.Settings.circuit());
    const uri = document.uri.toString();
    const syntax = textProblems(document).map(({ mends = [], ...rest }) => ({ ...rest, mends }));
    const found = findings
      .filter(({ origin }) => origin.uri === uri)
      .map((finding) => ({ ...finding, mends: [...(finding.mends ?? []), ...this.accepts(finding, document)] }));
    return [...syntax, ...found].map(({ code, message, origin, mends }) => ({
      code,
      message,
      origin: { ...origin, text: '' },
      mends,
    }));
  }

  /** Ports for the open end of a line, as an answer to the finding on that end. */
  private otherEnds(document: LangiumDocument): readonly Mendable[] {
    const { Readings, Judgements } = this.shared.workspace;
    const reading = Readings.readingOf(document);
    const circuit = this.shared.window.Settings.circuit();
    const { findings } = Judgements.of(reading, circuit);
    return openEnds(reading[circuit], document.textDocument.getText()).flatMap(({ port, places, mends }) => {
      const { code, message } = findings.find(({ subject }) => subject === port) ?? { code: '', message: '' };
      return places.map((place) => ({ code, message, origin: { ...place, text: '' }, mends }));
    });
  }

  private accepts(finding: Finding, document: LangiumDocument): readonly Mend[] {
    if (!isAcceptable(finding)) return [];
    const text = document.textDocument.getText();
    const mend = acceptMend(finding, { today: today(), uri: document.uri.toString(), fileEnd: text.trimEnd().length });
    // The empty lines that end the file give way.
    return [{ ...mend, edits: mend.edits.map((edit) => ({ ...edit, end: Math.max(edit.end, text.length) })) }];
  }

  private quickFixes(all: readonly Mendable[], document: LangiumDocument, params: CodeActionParams): CodeAction[] {
    const { textDocument } = document;
    const stretch = { start: textDocument.offsetAt(params.range.start), end: textDocument.offsetAt(params.range.end) };
    return all
      .filter(({ origin }) => touches(origin, stretch))
      .flatMap((mendable) => {
        const diagnostics = params.context.diagnostics.filter(
          ({ code, message }) =>
            code === mendable.code && typeof message === 'string' && message.includes(mendable.message),
        );
        const [onlyMend, ...others] = mendable.mends;
        return mendable.mends.flatMap((mend): CodeAction[] => {
          const edit = this.editOf(mend.edits);
          if (edit === undefined) return [];
          const preferred = mend === onlyMend && others.length === 0 ? { isPreferred: true } : {};
          return [{ title: mend.title, kind: CodeActionKind.QuickFix, diagnostics, edit, ...preferred }];
        });
      });
  }

  /** Every mend that cannot be meant otherwise; of two that touch each other the first. */
  private fixAllSafe(all: readonly Mendable[]): CodeAction[] {
    const edits: Mend['edits'][number][] = [];
    for (const { mends } of all) {
      const safe = mends.find((mend) => mend.safe === true);
      if (safe === undefined) continue;
      const overlaps = safe.edits.some((edit) => edits.some((other) => other.uri === edit.uri && touches(other, edit)));
      if (!overlaps) edits.push(...safe.edits);
    }
    const edit = edits.length === 0 ? undefined : this.editOf(edits);
    return edit === undefined ? [] : [{ title: 'Mend all that can only be meant one way', kind: fixAll, edit }];
  }

  /** Undefined where an edit belongs in a file that is not at hand. */
  private editOf(edits: readonly Mend['edits'][number][]): WorkspaceEdit | undefined {
    const byFile = new Map<string, TextEdit[]>();
    for (const edit of edits) {
      const place = locationOf(edit, this.shared);
      if (place === undefined) return undefined;
      byFile.set(edit.uri, [...(byFile.get(edit.uri) ?? []), { range: place.range, newText: edit.text }]);
    }
    const files = [...byFile];
    if (this.versioned) {
      return {
        documentChanges: files.map(([uri, changes]) => ({
          textDocument: { uri, version: this.shared.workspace.TextDocuments.get(uri)?.version ?? null },
          edits: changes,
        })),
      };
    }
    return { changes: Object.fromEntries(files) };
  }

  private get versioned(): boolean {
    return this.shared.window.Window.versionedEdits();
  }
}

/** The day as the user's clock has it, year-month-day. */
function today(): string {
  const now = new Date();
  const two = (value: number) => String(value).padStart(2, '0');
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
}
