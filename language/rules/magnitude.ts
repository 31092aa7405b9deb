/** magnitude: a value of a size that no vehicle has. */
import { writtenOf } from '../figures/given.ts';
import { pressuresReadIn } from '../figures/highest-pressure.ts';
import { inFamilyOf } from '../figures/writing.ts';
import { estimateOf, type Stated, writeEstimate, writeStated } from '../quantity/index.ts';
import { pressureMarks } from '../standards/line-pressure.ts';
import { type Magnitude, oddity } from '../standards/magnitudes.ts';
import { commonPractice } from '../standards/source.ts';
import { estimateFact } from '../system/fact-of.ts';
import { properties } from '../system/kinds/index.ts';
import { allParts, type System } from '../system/system.ts';
import { sizesOf } from './magnitude-sizes.ts';
import { oncePerPlace } from './once-per-place.ts';
import { aboveRatingAtPush } from './push-above-rating.ts';
import type { Remark, Rule } from './rule.ts';
import { sentence, written } from './wording.ts';

const master = (bore: string) => `master main single {\n  bore ${bore}\n  port out: 3/8-24 inverted-flare plugged\n}\n`;

const pushed = (push: string) => `pedal foot {
  ratio 6
  push ${push}
  pushes main
}
master main single {
  bore 3/4 in
  stroke 30 mm
  port out: 3/8-24 inverted-flare
}
hose front {
  rating 100 bar
  from main.out: 3/8-24 male inverted-flare fixed
}
`;

export const magnitude: Rule = {
  code: 'magnitude',
  severity: 'warning',
  acceptable: true,
  question: 'Is the value of a size that is found on vehicles?',
  why: 'A slip of the pen, a metre for a millimetre, makes every figure that rests on it wrong.',
  source: commonPractice(
    'wide ranges, from motorcycles to lorries of a century; hose pressures by 49 CFR 571.106 S5.3.2',
  ),
  fires: [
    { title: 'a bore of three metres', text: master('3 m') },
    { title: 'tube as thick as an arm', text: 'run line { tube 3 in }\n' },
    {
      title: 'a line pressure above what a hose is proved at',
      text: `${master('3/4 in').replace('}', '  2026-03-01 line-pressure 500 bar\n}')}`,
    },
    {
      title: 'a pressure that was measured above the rating of a hose in the same circuit',
      text: `master main single {
  port out: 3/8-24 inverted-flare
  2026-03-01 line-pressure 120 bar
}
hose front {
  rating 100 bar
  from main.out: 3/8-24 male inverted-flare fixed
}
`,
    },
    { title: 'a push that makes more than the rating of a hose', text: pushed('1500 N') },
    { title: 'a wheelbase in the wrong unit', text: 'vehicle van { wheelbase 2.64 mm }\n' },
  ],
  silent: [
    { title: 'a usual bore', text: master('3/4 in') },
    { title: 'a bore that is not known', text: master('?') },
    { title: 'a push that makes less than the rating of a hose', text: pushed('300 N') },
    { title: 'tube of 3/16 in', text: 'run line { tube 3/16 in wall 0.028 in }\n' },
  ],
  check: ({ system, figures }) =>
    oncePerPlace([
      ...sizesOf(system).flatMap(({ size, stated, name, origin, subject }) => {
        const message = sayOdd(name, stated, size);
        return message === undefined ? [] : [{ message, origin, subject }];
      }),
      ...aboveRating(system),
      ...aboveRatingAtPush(system, figures),
    ]),
};

/** "bore of main is 3 m, larger than any: …"; undefined for what may be. */
function sayOdd(name: string, stated: Stated, size: Magnitude): string | undefined {
  const [estimate, like] = [estimateOf(stated), writtenOf(stated)];
  if (estimate === undefined || like === undefined) return undefined;
  // Certain only if both limits lie outside on the same side.
  const high = oddity(size, estimate.low)?.kind === 'larger-than-any';
  const low = oddity(size, estimate.high)?.kind === 'smaller-than-any';
  if (!high && !low) return undefined;
  const usual = inFamilyOf(like, size.dimension);
  const [from, to] = [size.low, size.high].map((end) => written(end, usual, { significant: 3 }));
  const how = high ? 'more than on any vehicle' : 'less than on any vehicle';
  return `${sentence(name)} is ${writeStated(stated)}, ${how}: ${size.words} goes from ${from} to ${to} (${size.why}). Check the number and its unit.`;
}

/** Hoses and other parts whose maker allows less than was read in their circuit. */
function aboveRating(system: System): readonly Remark[] {
  const highestPressureAt = pressuresReadIn(system);
  return allParts(system).flatMap((rated): readonly Remark[] => {
    const rating = estimateFact(rated, properties.rating);
    if (rating === undefined) return [];
    const stated = highestPressureAt(rated);
    if (stated === undefined || !(stated.pressure.low > rating.high)) return [];
    const { pressure, written: like, where, subject, origin } = stated;
    const rest = `brake hose is proved at ${written(pressureMarks.hoseProof.pressure, like)}`;
    return [
      {
        message: `${rated.label} is rated ${written(rating.high, like)}, and ${writeEstimate(pressure, { like })} was measured in its circuit, at ${where}. Fit one that is rated above what the circuit reaches; ${rest}.`,
        origin: rated.facts.get(properties.rating.key)?.origin ?? rated.nameOrigin,
        subject: rated.id,
        ...(subject === undefined ? {} : { also: [subject] }),
        related: [{ message: 'the reading', origin }],
      },
    ];
  });
}
