import { describe, expect, it } from 'vitest';
import { explainFigure } from '../../../language/figures/index.ts';
import { figuresIn } from '../ask.ts';
import { saloon } from './saloon.ts';

const handbrake = `parking-brake hand { site wheels acts-on rear-left, rear-right lever-ratio 6 hand-force 300 N
  efficiency 0.7 pull-ratio 5 cable {} }`;
const whole = saloon({ vehicle: 'class car first-use 2005', more: handbrake, valve: 'split-point 30 bar slope 0.3' });
const facts = [
  'wheelbase 2.650 m',
  'tyre-radius 305 mm',
  'mass 1400 kg',
  'cg-behind-front-axle 1.200 m',
  'cg-height 0.560 m',
  'effective-radius 105 mm',
  'friction 0.38',
  'friction 0.36',
  'push-out 0.5 bar',
  'push-out 5 bar',
  'pivot-radius 90 mm',
  'lever-arm 170 mm',
  'lining-start 20 deg',
  'lining-end 125 deg',
  'bore 54 mm',
  'bore 19.05 mm',
  'drum 228.6 mm',
  'pistons 1',
  'ratio 6.0',
  'push 400 N',
  'split-point 30 bar',
  'slope 0.3',
  'lever-ratio 6',
  'hand-force 300 N',
  'pull-ratio 5',
];

describe('a fact that is nothing, unknown, huge or the wrong way round', () => {
  const changes: readonly [string, (fact: string) => string][] = [
    ['nothing', (fact) => fact.replace(/[\d.]+/, '0')],
    ['unknown', (fact) => fact.replace(/ .*/, ' ?')],
    ['huge', (fact) => fact.replace(/[\d.]+/, '98765432109876543210')],
    ['below nothing', (fact) => fact.replace(/[\d.]+/, (number) => `-${number}`)],
    ['left out', () => ''],
  ];
  it.each(changes)('%s: never a figure that is no number, always a name for what is missing', (_words, change) => {
    for (const fact of facts) {
      expect(whole.split(fact).length, fact).toBeGreaterThan(1);
      const figures = figuresIn(
        whole.replaceAll(` ${fact}`, ` ${change(fact)}`).replaceAll('drum  linings', 'linings'),
      );
      const text = figures.all.flatMap((figure) => explainFigure(figure).map((line) => line.text)).join('\n');
      expect(text, fact).not.toMatch(/\b(NaN|Infinity|undefined|null)\b/);
      for (const { id, result } of figures.all) {
        if (result.kind === 'unknown') expect(result.waitsFor.length, `${fact}: ${id}`).toBeGreaterThan(0);
        else expect(result.estimate.low, `${fact}: ${id}`).toBeLessThanOrEqual(result.estimate.high);
      }
    }
  });
});
