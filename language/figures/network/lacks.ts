/** Tells what is not known of a circuit: what counts by name, small things of one sort together. */
import type { Need } from '../figure.ts';
import { eachOnce } from '../result.ts';
import type { Lack } from './taking.ts';

/** So many names stand in one need; the rest is counted. */
const mostNames = 3;

/** Each once, what counts most first. */
export function toldLacks(lacks: readonly Lack[]): readonly Need[] {
  const singly = lacks.filter(({ group }) => group === undefined).map(({ need }) => need);
  return [...eachOnce(singly), ...grouped(lacks)];
}

/** Without these a pressure that follows from a stroke would be wrong by more than a little. */
export function essentialLacks(lacks: readonly Lack[]): readonly Need[] {
  return eachOnce(lacks.filter(({ weight }) => weight !== 'small').map(({ need }) => need));
}

/** Without these a stroke says little. */
export function gapLacks(lacks: readonly Lack[]): readonly Need[] {
  return eachOnce(lacks.filter(({ weight }) => weight === 'gap').map(({ need }) => need));
}

function grouped(lacks: readonly Lack[]): readonly Need[] {
  const byLead = new Map<string, { readonly labels: string[]; readonly origin: Need['origin'] }>();
  for (const { group, need } of lacks) {
    if (group === undefined) continue;
    const entry = byLead.get(group.lead) ?? { labels: [], origin: need.origin };
    byLead.set(group.lead, entry);
    if (!entry.labels.includes(group.label)) entry.labels.push(group.label);
  }
  return [...byLead].map(([lead, { labels, origin }]) => ({ name: `${lead} ${listed(labels)}`, origin }));
}

function listed(labels: readonly string[]): string {
  const more = labels.length - mostNames;
  return more > 0 ? `${labels.slice(0, mostNames).join(', ')} and ${more} more` : labels.join(', ');
}
