/** Problems of the text and findings of the rules as diagnostics, each under its code with its page and related places. */
import type { LangiumDocument } from 'langium';
import { type Diagnostic, DiagnosticSeverity, DiagnosticTag } from 'vscode-languageserver-types';
import {
  type Finding,
  type Origin,
  type Related,
  type Severity,
  type TextProblem,
  textProblems,
} from '../../language/index.ts';
import { locationOf, rangeOf } from './positions.ts';
import type { ServerSharedServices } from './services.ts';

const diagnosticSource = 'linewright';

const severities: Readonly<Record<Severity, DiagnosticSeverity>> = {
  error: DiagnosticSeverity.Error,
  warning: DiagnosticSeverity.Warning,
  question: DiagnosticSeverity.Information,
  information: DiagnosticSeverity.Information,
};

/** Everything that is to be said about a document, in the order of the text. */
export function diagnosticsOf(document: LangiumDocument, shared: ServerSharedServices): readonly Diagnostic[] {
  const refusal = shared.workspace.LangiumDocumentFactory.refusal(document);
  if (refusal !== undefined) return [refusedText(refusal)];
  const syntax = textProblems(document).map((problem) => textDiagnostic(problem, document));
  const reading = shared.workspace.Readings.readingOf(document);
  const { findings } = shared.workspace.Judgements.of(reading, shared.window.Settings.circuit());
  return [...syntax, ...findings.map((finding) => findingDiagnostic(finding, document, shared))];
}

function refusedText(message: string): Diagnostic {
  const start = { line: 0, character: 0 };
  return {
    range: { start, end: start },
    severity: DiagnosticSeverity.Error,
    code: 'unreadable',
    source: diagnosticSource,
    message,
  };
}

function textDiagnostic({ code, message, origin }: TextProblem, document: LangiumDocument): Diagnostic {
  return {
    range: rangeOf(origin, document.textDocument),
    severity: DiagnosticSeverity.Error,
    code,
    source: diagnosticSource,
    message,
  };
}

function findingDiagnostic(finding: Finding, document: LangiumDocument, shared: ServerSharedServices): Diagnostic {
  const here = document.uri.toString();
  const isForeign = finding.origin.uri !== here;
  const place = isForeign
    ? (shared.workspace.UsedFiles.leadingTo(document, finding.origin.uri) ?? { uri: here, start: 0, end: 0 })
    : finding.origin;
  const related = [
    ...(isForeign ? [{ message: 'it is said here', origin: finding.origin }] : []),
    ...(finding.related ?? []),
  ];
  const page = shared.window.Window.pageOf(finding.code);
  return {
    range: rangeOf(place, document.textDocument),
    severity: severities[finding.severity],
    code: finding.code,
    source: diagnosticSource,
    message: messageOf(finding, isForeign),
    ...(page === undefined ? {} : { codeDescription: { href: page } }),
    ...(finding.unused === true ? { tags: [DiagnosticTag.Unnecessary] } : {}),
    ...(related.length > 0 ? { relatedInformation: relatedPlaces(related, shared) } : {}),
  };
}

/** A question asks for a measurement and accuses nobody, and says so. */
export function messageOf({ severity, message, origin }: Finding, isForeign = false): string {
  const file = isForeign ? `In ${decodeURIComponent(origin.uri.split('/').at(-1) ?? origin.uri)}: ` : '';
  return severity === 'question' ? `${file}To be settled: ${message}` : `${file}${message}`;
}

function relatedPlaces(related: readonly Related[], shared: ServerSharedServices) {
  return related.flatMap(({ message, origin }) => {
    const location = locationOf(origin, shared);
    return location === undefined ? [] : [{ message, location }];
  });
}

/** Whether a place in the text touches a stretch of it, ends included. */
export function touches(origin: Origin, stretch: { readonly start: number; readonly end: number }): boolean {
  return origin.start <= stretch.end && stretch.start <= origin.end;
}
