/** `load.mass`, `load.front-share`, `load.cg-behind-front-axle`, `load.transfer`: what a load case comes to at rest. */
import { combineEstimates, type Dimension, plainUnit, type WrittenUnit, writtenIn } from '../../quantity/index.ts';
import { standardGravity } from '../../standards/gravity.ts';
import { commonPractice } from '../../standards/source.ts';
import type { Figure } from '../figure.ts';
import { type Given, inputsOf, needsOf } from '../given.ts';
import { unknownResult } from '../result.ts';
import { inFamilyOf, millimetres } from '../writing.ts';
import type { Derived, LoadFacts } from './load-case.ts';
import { knownOf, loadSubject } from './rough.ts';
import { staticsSource } from './statics.ts';

const weighed = commonPractice('axle by axle as weighed');

/** In kg. */
export function loadMass(facts: LoadFacts): Figure<'mass'> {
  return derived(facts, 'mass', facts.mass, { id: 'load.mass', title: 'mass', written: writingOf(facts.mass.givens) });
}

/** Of the mass, standing still; 0 to 1. */
export function loadFrontShare(facts: LoadFacts): Figure<'number'> {
  const about = { id: 'load.front-share', title: 'share on the front axle at rest', written: writtenIn(plainUnit) };
  return derived(facts, 'number', facts.frontShare, about);
}

/** In m; undefined where the file states it itself. */
export function loadBehindFront(facts: LoadFacts): Figure<'length'> | undefined {
  if (facts.behindFront.formula === 'as stated') return undefined;
  return derived(facts, 'length', facts.behindFront, {
    id: 'load.cg-behind-front-axle',
    title: 'centre of gravity behind the front axle',
    written: writingOf([facts.wheelbase]),
  });
}

/** In N for a deceleration of standard gravity; in proportion for others. */
export function loadTransfer(facts: LoadFacts): Figure<'force'> {
  const { mass, gravityHeight, wheelbase } = facts;
  const givens = [...mass.givens, gravityHeight, wheelbase];
  return {
    id: 'load.transfer',
    subject: loadSubject(facts),
    title: 'load that moves to the front axle at 1 g',
    written: inFamilyOf(writingOf(mass.givens), 'force'),
    result:
      mass.estimate !== undefined && gravityHeight.kind === 'given' && wheelbase.kind === 'given'
        ? knownOf(
            'force',
            combineEstimates(
              'force',
              (kilograms, high, long) => (kilograms * standardGravity * high) / long,
              mass.estimate,
              gravityHeight.estimate,
              wheelbase.estimate,
            ),
            facts,
          )
        : unknownResult('force', needsOf(givens)),
    formula: 'weight × cg-height / wheelbase',
    inputs: inputsOf(givens),
    source: staticsSource,
    notes: [],
  };
}

function derived<D extends Dimension>(
  facts: LoadFacts,
  dimension: D,
  { estimate, givens, formula }: Derived<D>,
  about: Pick<Figure, 'id' | 'title' | 'written'>,
): Figure<D> {
  return {
    ...about,
    subject: loadSubject(facts),
    result: estimate ? knownOf(dimension, estimate, facts) : unknownResult(dimension, needsOf(givens)),
    formula,
    inputs: inputsOf(givens),
    source: weighed,
    notes: [],
  };
}

function writingOf(givens: readonly Given[]): WrittenUnit {
  const first = givens.find((given) => given.kind === 'given');
  return first?.kind === 'given' ? first.written : millimetres;
}
