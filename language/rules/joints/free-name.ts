/** Finds a name for a part that a mend adds. */
import type { System } from '../../system/system.ts';

/** The name wanted, or the first of `name-2`, `name-3`, … that no part of the system has. */
export function freeName(wanted: string, system: System): string {
  const taken = new Set<string>(system.parts.map((part) => part.name));
  let name = wanted;
  for (let count = 2; taken.has(name); count++) name = `${wanted}-${count}`;
  return name;
}
