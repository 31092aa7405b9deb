/** The words of the preview page, taken from the localisation bundle and handed to the page as data. */
import type { Words } from './messages.ts';

/** The editor's own `l10n`, or another that fills in `{0}` and so on. */
export interface Localisation {
  readonly t: (sentence: string) => string;
}

export function pageWords(l10n: Localisation): Words {
  return {
    tools: l10n.t('Schematic tools'),
    canvas: l10n.t('Schematic'),
    keys: l10n.t(
      'Tab goes from part to part, arrow keys follow the lines, Enter goes to the text, Escape to the editor. Plus and minus zoom, 0 is full size, F fits the picture.',
    ),
    zoomIn: l10n.t('Zoom in'),
    zoomOut: l10n.t('Zoom out'),
    fit: l10n.t('Fit'),
    fullSize: l10n.t('Full size'),
    list: l10n.t('List'),
    listTitle: l10n.t('Parts and lines'),
    circuit: l10n.t('Circuit'),
    planned: l10n.t('As planned'),
    found: l10n.t('As found'),
    saveSvg: l10n.t('Save as SVG'),
    savePng: l10n.t('Save as PNG'),
    waiting: l10n.t('Waiting for the first picture.'),
    brokenWithPicture: l10n.t('This picture is from before the error on line {0}: {1}'),
    brokenPartly: l10n.t('Drawn as far as the text can be read; there is an error on line {0}: {1}'),
    brokenWithout: l10n.t('There is no picture yet: the text has an error on line {0}: {1}'),
    goToLine: l10n.t('Go to line {0}'),
    summary: l10n.t('Errors: {0}, warnings: {1}, to measure: {2}'),
    error: l10n.t('Error'),
    warning: l10n.t('Warning'),
    information: l10n.t('Note'),
    question: l10n.t('Question'),
  };
}
