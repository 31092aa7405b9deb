/** unworkable-route: a route that no tube can take. */
import { developmentOf } from '../figures/index.ts';
import { sayRouteProblem } from '../figures/route-problem.ts';
import { lengthWriting } from '../figures/run-route.ts';
import { defaultUnitFor, writeQuantity } from '../quantity/index.ts';
import { fromMemory } from '../standards/source.ts';
import type { Part } from '../system/part.ts';
import { allParts } from '../system/system.ts';
import { oncePerPlace } from './once-per-place.ts';
import type { Remark, Rule } from './rule.ts';
import { written } from './wording.ts';

const routed = (route: string) => `run line {\n  tube 3/16 in\n  bend-radius 25 mm\n  route ${route}\n}\n`;

export const unworkableRoute: Rule = {
  code: 'unworkable-route',
  severity: 'error',
  acceptable: false,
  question: 'Can a tube be bent that way?',
  why: 'A route that cannot be gives no length to cut and no marks to bend at.',
  source: fromMemory('plane and solid geometry of bends, as in the bending chapter of Machinery’s Handbook'),
  fires: [
    {
      title: 'two bends that overlap',
      text: routed('corner 100 mm, bend 90 deg, corner 30 mm, bend 90 deg, corner 100 mm'),
    },
    { title: 'a turn with nothing to turn against', text: routed('straight 100 mm, turn 90 deg, straight 100 mm') },
    { title: 'one point', text: routed('point (0 mm, 0 mm, 0 mm)') },
  ],
  silent: [
    {
      title: 'a route that can be bent',
      text: routed('straight 100 mm, bend 90 deg, straight 60 mm, turn 90 deg, bend 45 deg, straight 100 mm'),
    },
    { title: 'a route of which a length is not known', text: routed('straight ?, bend 90 deg, straight 60 mm') },
  ],
  check: ({ system }) => oncePerPlace(allParts(system).flatMap((run) => remarksOn(run))),
};

function remarksOn(run: Part): readonly Remark[] {
  const { route } = run;
  const problems = developmentOf(run)?.problems ?? [];
  if (route === undefined || problems.length === 0) return [];
  const like = lengthWriting(run);
  const degrees = { unit: defaultUnitFor('angle', 'metric') };
  return problems.map((problem) => ({
    message: `Route of ${run.label}: ${sayRouteProblem(problem, {
      length: (value) => written(value, like),
      angle: (value) => writeQuantity(value, degrees),
    })}`,
    origin: route.steps[problem.item]?.origin ?? route.origin,
    subject: run.id,
  }));
}
