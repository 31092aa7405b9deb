/** Prints what was measured, each row with the exponent by which it grows from the smaller generated file to the larger. */
import { cpus, loadavg } from 'node:os';
import type { Measured } from './main.ts';
import { growthExponent } from './statistics.ts';

interface Row {
  readonly title: string;
  readonly unit: 'ms' | 'MB' | '';
  readonly values: readonly (number | undefined)[];
  /** What is aimed at for the example. */
  readonly aim?: string;
}

export function printTable(measured: readonly Measured[]): void {
  const phases = [...new Set(measured.flatMap((each) => [...each.phases.keys()]))];
  const wait = (pick: (each: Measured) => number): readonly number[] => measured.map(pick);
  const rows: readonly Row[] = [
    { title: 'lines', unit: '', values: wait(({ lines }) => lines) },
    { title: 'cold start to diagnostics', unit: 'ms', values: wait(({ waits }) => waits.coldStart), aim: '< 300 ms' },
    { title: 'key to diagnostics', unit: 'ms', values: wait(({ waits }) => waits.diagnostics), aim: '< 16 ms' },
    { title: 'key to picture', unit: 'ms', values: wait(({ waits }) => waits.picture), aim: '< 100 ms' },
    { title: 'ten keys at once to diagnostics', unit: 'ms', values: wait(({ waits }) => waits.burst) },
    {
      title: '  … as many times one key',
      unit: '',
      values: wait(({ waits }) => waits.burst / waits.diagnostics),
      aim: '< 2',
    },
    { title: 'memory after the first edits', unit: 'MB', values: wait(({ waits }) => waits.memoryBefore / 1e6) },
    { title: 'memory after 1000 edits more', unit: 'MB', values: wait(({ waits }) => waits.memoryAfter / 1e6) },
    ...phases.map(
      (title): Row => ({
        title,
        unit: 'ms',
        values: measured.map((each) => each.phases.get(title)),
        ...(title === 'all sheets as pages' ? { aim: '< 50 ms' } : {}),
      }),
    ),
  ];
  const [small, large] = measured.slice(-2);
  const heads = ['median', ...measured.map(({ title, parts }) => `${title} (${parts} parts)`), 'grows as', 'aim'];
  const body = rows.map(({ title, unit, values, aim }) => {
    const [from, to] = values.slice(-2);
    const sizes = small && large ? { from: small.parts, to: large.parts } : { from: Number.NaN, to: Number.NaN };
    const exponent = growthExponent(
      { size: sizes.from, value: from ?? Number.NaN },
      { size: sizes.to, value: to ?? Number.NaN },
    );
    const growth = unit === 'ms' && Number.isFinite(exponent) && measured.length > 2 ? `n^${exponent.toFixed(2)}` : '';
    return [title, ...values.map((value) => shown(value, unit)), growth, aim ?? ''];
  });
  const widths = heads.map((head, i) => Math.max(head.length, ...body.map((row) => row[i]?.length ?? 0)));
  const line = (row: readonly string[]): string =>
    row
      .map((cell, i) => (i === 0 ? cell.padEnd(widths[i] ?? 0) : cell.padStart(widths[i] ?? 0)))
      .join('  ')
      .trimEnd();
  const rule = widths.map((width) => '-'.repeat(width)).join('  ');
  process.stdout.write(`${[line(heads), rule, ...body.map(line), '', machine()].join('\n')}\n`);
}

/** What the figures were had on; a busy machine makes every wait longer. */
function machine(): string {
  const load = loadavg()[0] ?? 0;
  const busy = load > cpus().length ? '; it was busy, so waits are longer than they need to be' : '';
  return `Node ${process.versions.node}, ${cpus().length} processors, load ${load.toFixed(1)}${busy}.`;
}

function shown(value: number | undefined, unit: Row['unit']): string {
  if (value === undefined || Number.isNaN(value)) return '–';
  if (unit === 'ms') return `${value < 10 ? value.toFixed(2) : value < 100 ? value.toFixed(1) : value.toFixed(0)} ms`;
  if (unit === 'MB') return `${value.toFixed(0)} MB`;
  return Number.isInteger(value) ? String(value) : value.toFixed(2);
}
