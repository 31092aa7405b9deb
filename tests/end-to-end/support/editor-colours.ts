/** A few of the colours that the editor hands to a webview, by kind of theme, for pages that are shown without an editor. */
export type ThemeKind = 'vscode-light' | 'vscode-dark' | 'vscode-high-contrast' | 'vscode-high-contrast-light';

export const themeKinds: readonly ThemeKind[] = [
  'vscode-light',
  'vscode-dark',
  'vscode-high-contrast',
  'vscode-high-contrast-light',
];

interface Ground {
  readonly paper: string;
  readonly ink: string;
  readonly focus: string;
  readonly button: string;
  readonly border: string;
}

const grounds: Readonly<Record<ThemeKind, Ground>> = {
  'vscode-light': { paper: '#ffffff', ink: '#3b3b3b', focus: '#005fb8', button: '#e5e5e5', border: '#cecece' },
  'vscode-dark': { paper: '#1f1f1f', ink: '#cccccc', focus: '#0078d4', button: '#313131', border: '#454545' },
  'vscode-high-contrast': { paper: '#000000', ink: '#ffffff', focus: '#f38518', button: '#000000', border: '#6fc3df' },
  'vscode-high-contrast-light': {
    paper: '#ffffff',
    ink: '#292929',
    focus: '#006bbd',
    button: '#ffffff',
    border: '#0f4a85',
  },
};

export function editorColours(kind: ThemeKind): Readonly<Record<string, string>> {
  const { paper, ink, focus, button, border } = grounds[kind];
  return {
    '--vscode-font-family': 'sans-serif',
    '--vscode-font-size': '13px',
    '--vscode-foreground': ink,
    '--vscode-editor-background': paper,
    '--vscode-editor-foreground': ink,
    '--vscode-focusBorder': focus,
    '--vscode-button-background': focus,
    '--vscode-button-foreground': kind === 'vscode-high-contrast' ? '#000000' : '#ffffff',
    '--vscode-button-secondaryBackground': button,
    '--vscode-button-secondaryForeground': ink,
    '--vscode-button-secondaryHoverBackground': button,
    '--vscode-button-border': border,
    '--vscode-panel-border': border,
    '--vscode-list-hoverBackground': button,
    '--vscode-list-activeSelectionBackground': kind === 'vscode-high-contrast' ? '#000000' : focus,
    '--vscode-list-activeSelectionForeground': '#ffffff',
    ...(kind.startsWith('vscode-high-contrast') ? { '--vscode-contrastActiveBorder': focus } : {}),
    '--vscode-inputValidation-warningBackground': paper,
    '--vscode-inputValidation-warningBorder': '#b89500',
  };
}
