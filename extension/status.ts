/** The language status item: whether the server runs, and what it made of the file. */
import {
  type Diagnostic,
  DiagnosticSeverity,
  type Disposable,
  LanguageStatusSeverity,
  l10n,
  languages,
  window,
} from 'vscode';
import { documentSelector } from './client/documents.ts';
import type { Server, ServerState } from './client/server.ts';

export function createStatus(server: Server): Disposable {
  const item = languages.createLanguageStatusItem('linewright.status', documentSelector);
  item.name = 'Linewright';
  const refresh = () => Object.assign(item, said(server.state(), diagnosticsInSight()));
  refresh();
  const listeners = [
    server.onDidChangeState(refresh),
    window.onDidChangeActiveTextEditor(refresh),
    languages.onDidChangeDiagnostics(refresh),
  ];
  return {
    dispose: () => {
      for (const listener of listeners) listener.dispose();
      item.dispose();
    },
  };
}

function diagnosticsInSight(): readonly Diagnostic[] {
  const uri = window.activeTextEditor?.document.uri;
  return uri === undefined ? [] : languages.getDiagnostics(uri);
}

function said(state: ServerState, diagnostics: readonly Diagnostic[]) {
  const restart = { title: l10n.t('Restart'), command: 'linewright.restartServer' };
  const picture = { title: l10n.t('Show Schematic'), command: 'linewright.showPreviewToSide' };
  switch (state.kind) {
    case 'starting':
      return {
        text: l10n.t('Starting'),
        detail: '',
        severity: LanguageStatusSeverity.Information,
        busy: true,
        command: restart,
      };
    case 'running':
      return { text: tally(diagnostics), detail: '', severity: worst(diagnostics), busy: false, command: picture };
    case 'stopped':
      return {
        text: l10n.t('Stopped'),
        detail: '',
        severity: LanguageStatusSeverity.Warning,
        busy: false,
        command: restart,
      };
    case 'failed':
      return {
        text: l10n.t('Not running'),
        detail: state.message,
        severity: LanguageStatusSeverity.Error,
        busy: false,
        command: restart,
      };
  }
}

function tally(diagnostics: readonly Diagnostic[]): string {
  const errors = diagnostics.filter(({ severity }) => severity === DiagnosticSeverity.Error).length;
  const warnings = diagnostics.filter(({ severity }) => severity === DiagnosticSeverity.Warning).length;
  if (errors === 0 && warnings === 0) return l10n.t('No errors, no warnings');
  return l10n.t('Errors: {0}, warnings: {1}', errors, warnings);
}

function worst(diagnostics: readonly Diagnostic[]): LanguageStatusSeverity {
  const severities = diagnostics.map(({ severity }) => severity);
  if (severities.includes(DiagnosticSeverity.Error)) return LanguageStatusSeverity.Error;
  if (severities.includes(DiagnosticSeverity.Warning)) return LanguageStatusSeverity.Warning;
  return LanguageStatusSeverity.Information;
}
