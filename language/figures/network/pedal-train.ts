/** What a pedal works: the booster between, the master and its chambers, found from what the file says pushes what. */
import { isChamber } from '../../system/fluid-graph.ts';
import type { Part, PartId } from '../../system/part.ts';
import type { System } from '../../system/system.ts';
import type { Need } from '../figure.ts';

export interface PedalTrain {
  readonly pedal: Part;
  readonly boosters: readonly Part[];
  readonly master: Part;
  /** The primary one, nearest the rod, first. */
  readonly chambers: readonly Part[];
  readonly assumptions: readonly string[];
}

export type FoundTrain =
  | { readonly kind: 'train'; readonly train: PedalTrain }
  | { readonly kind: 'none'; readonly pedal: Part | undefined; readonly needs: readonly Need[] };

export function trainOf(system: System, wanted: PartId | undefined): FoundTrain {
  const pedal = wanted === undefined ? usualPedal(system) : system.partById.get(wanted);
  if (pedal === undefined)
    return { kind: 'none', pedal, needs: [{ name: 'a pedal', origin: system.vehicle?.nameOrigin }] };
  const boosters: Part[] = [];
  for (let from: Part = pedal; ; ) {
    const targets = pushedBy(from, system);
    const [target, ...more] = targets;
    if (more.length > 0) return { kind: 'none', pedal, needs: [shareNeed(from, targets)] };
    if (target?.kind === 'booster' && !boosters.includes(target)) {
      boosters.push(target);
      from = target;
      continue;
    }
    if (target !== undefined && isMaster(target)) return trainTo(target, { pedal, boosters, assumptions: [] });
    return unsaid(from, { pedal, boosters }, system);
  }
}

const isMaster = ({ kind }: Part): boolean => kind === 'master';

function usualPedal({ parts }: System): Part | undefined {
  return parts.find(({ kind }) => kind === 'pedal') ?? parts.find(({ kind }) => kind === 'clutch-pedal');
}

function pushedBy(from: Part, { links, partById }: System): readonly Part[] {
  return links
    .filter((link) => link.verb === 'pushes' && link.from === from.id)
    .flatMap(({ to }) => partById.get(to) ?? []);
}

function shareNeed(from: Part, targets: readonly Part[]): Need {
  const names = targets.map(({ label }) => label).join(' and ');
  return { name: `share of the push of ${from.label} on each of ${names}`, origin: from.nameOrigin };
}

function trainTo(master: Part, so: Omit<PedalTrain, 'master' | 'chambers'>): FoundTrain {
  const inside = master.parts.filter(isChamber);
  const ordered = [
    ...inside.filter(({ kind }) => kind === 'primary'),
    ...inside.filter(({ kind }) => kind !== 'primary'),
  ];
  return { kind: 'train', train: { ...so, master, chambers: isChamber(master) ? [master] : ordered } };
}

/** Where there is one pedal and one master that nothing else pushes, nobody writes which pushes which. */
function unsaid(from: Part, so: Pick<PedalTrain, 'pedal' | 'boosters'>, system: System): FoundTrain {
  const pushed = new Set(system.links.filter(({ verb }) => verb === 'pushes').map(({ to }) => to));
  const masters = system.parts.filter((part) => isMaster(part) && !pushed.has(part.id));
  const pedals = system.parts.filter(({ kind }) => kind === 'pedal' || kind === 'clutch-pedal');
  const [master, ...more] = masters;
  if (master !== undefined && more.length === 0 && pedals.length === 1) {
    return trainTo(master, { ...so, assumptions: [`${from.label} pushes ${master.label}: there is no other.`] });
  }
  return {
    kind: 'none',
    pedal: so.pedal,
    needs: [{ name: `what ${from.label} pushes`, origin: from.nameOrigin }],
  };
}
