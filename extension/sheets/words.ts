/** The words around a sheet, taken from the localisation bundle; the sheet itself comes with its own. */
import { l10n } from 'vscode';
import type { SheetName } from '../../server/protocol.ts';
import type { SheetWords } from './messages.ts';

export function sheetWords(): SheetWords {
  return {
    tools: l10n.t('Sheet tools'),
    circuit: l10n.t('Circuit'),
    planned: l10n.t('As planned'),
    found: l10n.t('As found'),
    print: l10n.t('Print…'),
    printHint: l10n.t('Opens the sheet in the browser, to be printed from there'),
    save: l10n.t('Save as…'),
    waiting: l10n.t('Waiting for the sheet.'),
  };
}

export function panelTitle(sheet: SheetName, file: string): string {
  switch (sheet) {
    case 'lines':
      return l10n.t('Lines to make: {0}', file);
    case 'parts':
      return l10n.t('Parts to buy: {0}', file);
    case 'measure':
      return l10n.t('Things to measure: {0}', file);
  }
}

/** The sheets to choose from, with what each is for. */
export function sheetChoices(): readonly {
  readonly sheet: SheetName;
  readonly label: string;
  readonly detail: string;
}[] {
  return [
    {
      sheet: 'lines',
      label: l10n.t('Lines to make'),
      detail: l10n.t('What to cut, nuts and flares in the order of work, bends and marks'),
    },
    {
      sheet: 'parts',
      label: l10n.t('Parts to buy'),
      detail: l10n.t('Counted and grouped, with the parts that need it'),
    },
    {
      sheet: 'measure',
      label: l10n.t('Things to measure'),
      detail: l10n.t('What is not known yet, place by place, and how to measure it'),
    },
  ];
}
