/** Editor settings that keep the window still while a test looks at it. */
import type { ExtensionHost } from './editor-server.ts';

export function settings(host: ExtensionHost): Readonly<Record<string, unknown>> {
  return {
    ...still,
    ...(host === 'web' ? { 'remote.extensionKind': { 'linewright.linewright': ['web'] } } : {}),
  };
}

const still = {
  'workbench.startupEditor': 'none',
  'workbench.tips.enabled': false,
  'workbench.colorTheme': 'Default Dark Modern',
  'workbench.secondarySideBar.defaultVisibility': 'hidden',
  'workbench.reduceMotion': 'on',
  'workbench.enableExperiments': false,
  'workbench.layoutControl.enabled': false,
  'chat.disableAIFeatures': true,
  'chat.commandCenter.enabled': false,
  'editor.accessibilitySupport': 'off',
  'editor.hover.delay': 100,
  'editor.minimap.enabled': false,
  'editor.stickyScroll.enabled': false,
  'editor.quickSuggestions': { other: 'off', comments: 'off', strings: 'off' },
  'editor.autoClosingBrackets': 'never',
  'editor.autoClosingQuotes': 'never',
  'editor.autoClosingComments': 'never',
  'editor.autoIndent': 'none',
  'extensions.autoUpdate': false,
  'extensions.autoCheckUpdates': false,
  'extensions.ignoreRecommendations': true,
  'telemetry.telemetryLevel': 'off',
  'security.workspace.trust.enabled': false,
  'update.mode': 'none',
  'git.enabled': false,
  'files.autoSave': 'off',
  'window.confirmBeforeClose': 'never',
};
