/** `load.lock-order-lead`, `load.utilisation-margin`: the balance beside what standards ask of it, for information. */
import { plainUnit, si, writtenIn } from '../../quantity/index.ts';
import type { LockRule, UtilisationRule } from '../../standards/braking-standards.ts';
import type { FigureContext } from '../context.ts';
import type { Figure } from '../figure.ts';
import { type Asked, askedOf, sectionOf, standing } from './asked.ts';
import { type BalanceOf, balanceOf } from './balance-of.ts';
import type { LoadFacts } from './load-case.ts';
import { type Balance, balancesBetween } from './lock-order.ts';
import { inGravities, loadSubject, roughly } from './rough.ts';

/** As an adhesion. Undefined where no standard of its class and year speaks of the order of locking. */
export function lockOrderLead(facts: LoadFacts, context: FigureContext): Figure<'number'> | undefined {
  const [asked, ...others] = askedOf(
    context.system,
    ({ lockOrder }) => lockOrder,
    (rule) => rule.to - rule.from,
  );
  if (asked === undefined) return undefined;
  const { rule } = asked;
  const lead = ({ braked: { adhesion } }: Balance) => adhesion.front - adhesion.rear;
  return leastFigure(facts, context, {
    asked,
    others,
    id: 'load.lock-order-lead',
    title: `least lead of the front axle in adhesion used, ${inGravities(rule.from)} to ${inGravities(rule.to)}`,
    formula: 'adhesion used in front − adhesion used behind, the least of all pressures',
    measure: lead,
    within: (balances) => balancesBetween(balances, rule),
    words: (least) =>
      `${sectionOf(rule.source)} asks that the front axle locks before the rear one, or with it, in that range: ` +
      `${least < 0 ? 'here the rear axle is ahead somewhere in it' : 'so it is here'}.`,
    reach: rule.to,
  });
}

/** As a braking ratio. Undefined where no standard of its class and year speaks of the adhesion used. */
export function utilisationMargin(facts: LoadFacts, context: FigureContext): Figure<'number'> | undefined {
  const [asked, ...others] = askedOf(
    context.system,
    ({ utilisation }) => utilisation,
    ({ slope }) => slope,
  );
  if (asked === undefined) return undefined;
  const { rule } = asked;
  const used = ({ braked: { adhesion } }: Balance) => Math.max(adhesion.front, adhesion.rear);
  return leastFigure(facts, context, {
    asked,
    others,
    id: 'load.utilisation-margin',
    title: `least margin over the braking ratio asked, adhesion ${rule.from} to ${rule.to}`,
    formula: `z − (${rule.base} + ${rule.slope} × (k − ${rule.from})), k the greater adhesion used, the least of all pressures`,
    measure: (balance) => balance.braked.z - (rule.base + rule.slope * (used(balance) - rule.from)),
    within: (question) =>
      balancesBetween(question, { from: 0, to: Number.POSITIVE_INFINITY }).filter(
        (balance) => used(balance) >= rule.from && used(balance) <= rule.to,
      ),
    words: (least) =>
      `${sectionOf(rule.source)} asks for a margin of zero or more: ${least < 0 ? 'here it is less' : 'so it is here'}.`,
    reach: undefined,
  });
}

interface LeastFigure extends Pick<Figure, 'id' | 'title' | 'formula'> {
  readonly asked: Asked<LockRule | UtilisationRule>;
  readonly others: readonly Asked<LockRule | UtilisationRule>[];
  readonly measure: (balance: Balance) => number;
  readonly within: (question: (BalanceOf & { readonly kind: 'ready' })['question']) => readonly Balance[];
  readonly words: (least: number) => string;
  /** The braking ratio up to which it is asked. */
  readonly reach: number | undefined;
}

function leastFigure(facts: LoadFacts, context: FigureContext, of: LeastFigure): Figure<'number'> | undefined {
  const axles = context.braking.axles();
  const balance = axles && balanceOf(facts, axles);
  if (balance === undefined || balance.kind === 'waits') return undefined;
  const balances = of.within(balance.question);
  const last = balances.at(-1);
  if (last === undefined) return undefined;
  const least = Math.min(...balances.map(of.measure));
  const falls = of.reach !== undefined && last.braked.z < of.reach - 0.05;
  return {
    id: of.id,
    subject: loadSubject(facts),
    title: of.title,
    written: writtenIn(plainUnit),
    result: {
      kind: 'known',
      dimension: 'number',
      estimate: roughly(si('number', least), balance.from),
      leftOut: [],
    },
    formula: of.formula,
    inputs: balance.inputs,
    source: of.asked.rule.source,
    notes: [
      of.words(least),
      standing(of.asked),
      ...of.others.map(({ standard, rule }) => `${standard.name} asks the like (${sectionOf(rule.source)}).`),
      ...(falls ? [`The pressure looked at brings no more than ${inGravities(last.braked.z)}.`] : []),
      ...balance.notes,
    ],
  };
}
