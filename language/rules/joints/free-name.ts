/** Finds a name for a part that a mend adds. */
import { partIdOf } from '../../system/part.ts';
import type { FileReading } from '../../system/system.ts';

/** The name wanted, or the first of `name-2`, `name-3`, … that no part has, as found or as planned. */
export function freeName(wanted: string, { found, planned }: FileReading): string {
  const isTaken = (name: string): boolean =>
    found.partById.has(partIdOf([name])) || planned.partById.has(partIdOf([name]));
  let name = wanted;
  for (let count = 2; isTaken(name); count++) name = `${wanted}-${count}`;
  return name;
}
