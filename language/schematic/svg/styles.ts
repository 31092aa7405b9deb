/** The style rules of the picture, written once, with the tones of a theme or with the variables of the window. */
import { fontFamily, type Theme, type ThemeVariable, themeVariables } from '../themes.ts';

type Tone = (variable: ThemeVariable) => string;

export const circuitStyles = 6;

/** For the window: tones come from `--lw-…`, which its stylesheet maps to the editor's colours. */
export const windowStyles: string = rules((variable) => `var(--lw-${variable})`, 'var(--lw-font, sans-serif)');

/** For a picture that stands alone: tones written out, as many programs that show SVG know no variables. */
export const themeStyles = (theme: Theme): string => rules((variable) => theme[variable], fontFamily);

/** The variables of a theme as declarations, for a stylesheet that wants to start from it. */
export const themeDeclarations = (theme: Theme): string =>
  Object.keys(themeVariables)
    .filter((name): name is ThemeVariable => Object.hasOwn(theme, name))
    .map((name) => `--lw-${name}: ${theme[name]};`)
    .join('\n');

function rules(tone: Tone, font: string): string {
  const circuits = Array.from({ length: circuitStyles }, (_, i) => i + 1).flatMap((n) => [
    `.lw-c${n} { stroke: ${tone(circuitVariable(n))}; }`,
    `.lw-c${n}.lw-full { fill: ${tone(circuitVariable(n))}; }`,
  ]);
  const badges = (['error', 'warning', 'information', 'question'] as const).flatMap((kind) => [
    `.lw-badge-${kind} { fill: ${tone(kind)}; stroke: ${tone(`${kind}-ink`)}; }`,
    `.lw-sign-${kind} { stroke: ${tone(`${kind}-ink`)}; }`,
    `.lw-has-${kind} .lw-body { stroke: ${kind === 'warning' ? tone('ink') : tone(kind === 'error' ? 'error' : 'ink')}; }`,
  ]);
  return [
    `.lw-picture { font-family: ${font}; }`,
    `.lw-paper { fill: ${tone('paper')}; }`,
    `.lw-title { fill: ${tone('ink')}; stroke: ${tone('paper')}; }`,
    `.lw-note { fill: ${tone('muted')}; stroke: ${tone('paper')}; }`,
    `.lw-word { fill: ${tone('ink')}; }`,
    `.lw-body { fill: ${tone('body')}; stroke: ${tone('ink')}; }`,
    `.lw-line, .lw-thin, .lw-dashed { fill: none; stroke: ${tone('ink')}; }`,
    `.lw-solid { fill: ${tone('ink')}; stroke: ${tone('ink')}; }`,
    `.lw-piston { fill: ${tone('piston')}; stroke: ${tone('ink')}; }`,
    `.lw-fluid { fill: ${tone('fluid')}; stroke: none; }`,
    '.lw-pipe { fill: none; }',
    `.lw-unfed { stroke: ${tone('muted')}; }`,
    `.lw-unfed.lw-full { fill: ${tone('muted')}; }`,
    ...circuits,
    `.lw-low { stroke: ${tone('muted')}; }`,
    `.lw-low.lw-full { fill: ${tone('muted')}; }`,
    `.lw-rod { stroke: ${tone('ink')}; }`,
    `.lw-rod-core { stroke: ${tone('paper')}; }`,
    `.lw-joint { stroke: ${tone('ink')}; }`,
    `.lw-band-fit { fill: none; stroke: ${tone('fit-band')}; }`,
    `.lw-field-fit { fill: ${tone('fit-band')}; stroke: ${tone('fit')}; }`,
    `.lw-strike { fill: none; stroke: ${tone('remove')}; }`,
    ...badges,
    `.lw-badge-to-fit { fill: ${tone('paper')}; stroke: ${tone('fit')}; }`,
    `.lw-sign-to-fit { stroke: ${tone('fit')}; }`,
    `.lw-badge-to-remove { fill: ${tone('paper')}; stroke: ${tone('remove')}; }`,
    `.lw-sign-to-remove { stroke: ${tone('remove')}; }`,
    '.lw-hit { fill: none; stroke: transparent; pointer-events: all; }',
    '.lw-ring { fill: none; stroke: none; }',
    `.lw-part:focus, .lw-pipe-group:focus { outline: none; }`,
    `.lw-part:focus .lw-ring, .lw-pipe-group:focus .lw-ring { stroke: ${tone('focus')}; }`,
    `.lw-selected .lw-ring { fill: none; stroke: ${tone('focus')}; }`,
    `.lw-selected .lw-pipe-band { stroke: ${tone('selected')}; }`,
    '.lw-pipe-band { fill: none; stroke: none; }',
  ].join('\n');
}

/** The variable of the n-th circuit, counted from 1; more circuits than tones begin again. */
function circuitVariable(n: number): ThemeVariable {
  const variables = ['circuit-1', 'circuit-2', 'circuit-3', 'circuit-4', 'circuit-5', 'circuit-6'] as const;
  return variables[(n - 1) % variables.length] ?? 'circuit-1';
}
