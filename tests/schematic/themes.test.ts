import { describe, expect, it } from 'vitest';
import { themeDeclarations, themeStyles, windowStyles } from '../../language/schematic/svg/styles.ts';
import { type Theme, type ThemeVariable, themes, themeVariables } from '../../language/schematic/themes.ts';

/** Relative luminance and contrast ratio by WCAG 2.2, "relative luminance" and "contrast ratio" (from memory). */
function luminance(hex: string): number {
  const [r, g, b] = [1, 3, 5].map((at) => {
    const part = Number.parseInt(hex.slice(at, at + 2), 16) / 255;
    return part <= 0.04045 ? part / 12.92 : ((part + 0.055) / 1.055) ** 2.4;
  });
  return 0.2126 * (r ?? 0) + 0.7152 * (g ?? 0) + 0.0722 * (b ?? 0);
}

function contrast(one: string, other: string): number {
  const [light, dark] = [luminance(one), luminance(other)].sort((a, b) => b - a);
  return ((light ?? 0) + 0.05) / ((dark ?? 0) + 0.05);
}

const names = Object.keys(themeVariables).filter((name): name is ThemeVariable => Object.hasOwn(themeVariables, name));
const circuits = names.filter((name) => name.startsWith('circuit-'));
const all = Object.entries(themes);

/** Least ratios by WCAG 2.2: 4.5 for text (1.4.3), 3 for graphics (1.4.11). */
const text = 4.5;
const graphics = 3;

describe.each(all)('the theme %s', (_name, theme: Theme) => {
  it.each(circuits)('has %s stand out from the paper', (name) => {
    expect(contrast(theme[name], theme.paper)).toBeGreaterThanOrEqual(graphics);
  });

  it('has readable words', () => {
    for (const name of ['ink', 'muted'] as const)
      expect(contrast(theme[name], theme.paper)).toBeGreaterThanOrEqual(text);
  });

  it('has marks with signs that stand out', () => {
    for (const kind of ['error', 'warning', 'information', 'question'] as const) {
      expect(contrast(theme[kind], theme[`${kind}-ink`]), kind).toBeGreaterThanOrEqual(text);
    }
    for (const kind of ['fit', 'remove', 'focus'] as const)
      expect(contrast(theme[kind], theme.paper)).toBeGreaterThanOrEqual(graphics);
  });

  it('keeps lines readable on the band of what is to be fitted', () => {
    for (const name of circuits)
      expect(contrast(theme[name], theme['fit-band']), name).toBeGreaterThanOrEqual(graphics);
  });

  it('writes a tone for each variable', () => {
    for (const name of names) {
      expect(theme[name]).toMatch(/^#[0-9a-f]{6}$/);
      expect(themeDeclarations(theme)).toContain(`--lw-${name}: ${theme[name]};`);
    }
    expect(themeStyles(theme)).not.toContain('undefined');
  });
});

describe('the styles for the window', () => {
  it('use every variable and no tone of their own', () => {
    for (const name of names) expect(windowStyles, name).toContain(`var(--lw-${name})`);
    expect(windowStyles).not.toMatch(/#[0-9a-f]{3,6}/i);
  });
});
