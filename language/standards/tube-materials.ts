/**
 * What brake tube is made of: least strengths, stiffness, and how the trade looks on each.
 * Sources: SAE J527 and ASTM B466 minimum values, C70600 data sheet, copper.org; each figure says how it is known.
 */

import { type Si, si } from '../quantity/dimension.ts';
import { commonPractice, fromMemory, published, type Source } from './source.ts';
import { megapascal } from './written-units.ts';

export const tubeMaterialNames = [
  'steel',
  'coated-steel',
  'stainless',
  'copper-nickel',
  'copper',
  'aluminium',
] as const;

export type TubeMaterialName = (typeof tubeMaterialNames)[number];

export interface TubeMaterial {
  readonly name: TubeMaterialName;
  readonly words: string;
  readonly leastTensile: Si<'pressure'>;
  readonly leastYield: Si<'pressure'>;
  readonly strengthSource: Source;
  readonly elasticModulus: Si<'pressure'>;
  readonly poisson: Si<'number'>;
  readonly elasticSource: Source;
  /** `questioned` is forbidden in some places and met in others; `never` belongs in no brake line. */
  readonly standing: 'usual' | 'questioned' | 'never';
  readonly remark: string;
  readonly remarkSource: Source;
}

const steel = {
  leastTensile: megapascal(290),
  leastYield: megapascal(170),
  strengthSource: published('SAE J527 double-wall brazed steel tube, minimum values as printed by a tube maker'),
  elasticModulus: megapascal(207_000),
  poisson: si('number', 0.29),
  elasticSource: fromMemory('handbook values for low-carbon steel'),
  standing: 'usual',
} as const;

export const tubeMaterials: Readonly<Record<TubeMaterialName, TubeMaterial>> = {
  steel: {
    name: 'steel',
    words: 'double-wall steel',
    ...steel,
    remark: 'rusts where its coating is scratched or a clip holds wet',
    remarkSource: commonPractice('inspection of old vehicles'),
  },
  'coated-steel': {
    name: 'coated-steel',
    words: 'coated double-wall steel',
    ...steel,
    remark: 'coated steel passed 60 road and humidity cycles and failed before 120',
    remarkSource: published('SAE paper 931028, as summed up on copper.org'),
  },
  stainless: {
    name: 'stainless',
    words: 'stainless steel',
    leastTensile: megapascal(515),
    leastYield: megapascal(205),
    strengthSource: fromMemory('ASTM A269 annealed 304 and 316'),
    elasticModulus: megapascal(193_000),
    poisson: si('number', 0.3),
    elasticSource: fromMemory('handbook values for austenitic stainless steel'),
    standing: 'usual',
    remark:
      'takes a double flare only when annealed and with a strong tool; often given a 37° single flare with a sleeve',
    remarkSource: published('trade magazine article on plumbing brakes'),
  },
  'copper-nickel': {
    name: 'copper-nickel',
    words: '90/10 copper-nickel',
    leastTensile: megapascal(262),
    leastYield: megapascal(90),
    strengthSource: fromMemory('ASTM B466 C70600, annealed; minimum values'),
    elasticModulus: megapascal(124_000),
    poisson: si('number', 0.33),
    elasticSource: published('C70600 data sheet of a mill (18 million psi); Poisson ratio from memory'),
    standing: 'usual',
    remark: 'passed 200 road and humidity cycles with its burst strength unchanged; bends and flares easily',
    remarkSource: published('SAE paper 931028, as summed up on copper.org'),
  },
  copper: {
    name: 'copper',
    words: 'plain copper',
    leastTensile: megapascal(200),
    leastYield: megapascal(60),
    strengthSource: fromMemory('annealed copper tube'),
    elasticModulus: megapascal(117_000),
    poisson: si('number', 0.34),
    elasticSource: fromMemory('handbook values for copper'),
    standing: 'questioned',
    remark:
      'hardens with vibration and cracks at the flares; forbidden in some places and still fitted in others, so ask your local code',
    remarkSource: published('trade texts on brake tube and notes on British cars'),
  },
  aluminium: {
    name: 'aluminium',
    words: 'aluminium',
    leastTensile: megapascal(90),
    leastYield: megapascal(35),
    strengthSource: fromMemory('annealed aluminium tube, of the softest kinds'),
    elasticModulus: megapascal(69_000),
    poisson: si('number', 0.33),
    elasticSource: fromMemory('handbook values for aluminium'),
    standing: 'never',
    remark: 'is never used for brake pressure: it tires and corrodes',
    remarkSource: commonPractice('aluminium is kept out of brake lines'),
  },
};
