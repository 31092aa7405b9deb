/** The vehicle, its places and loads, and the fluid in the text → the model's. */
import * as ast from '../../grammar/generated/ast.ts';
import { fluidProperties, loadProperties, vehicleProperties } from '../kinds/index.ts';
import type { FluidFill, Place, Vehicle } from '../vehicle.ts';
import { readFacts } from './facts.ts';
import { originOf, originOfProperty } from './origins.ts';
import type { ReadingNotes } from './problem-list.ts';
import { readReading } from './read-record.ts';
import { readValue } from './read-value.ts';

export function readVehicle(node: ast.Vehicle, notes: ReadingNotes): Vehicle {
  const name = node.name ?? 'vehicle';
  const names = new Set<string>();
  const places = node.places
    .map((place) => readPlace(place, notes))
    .filter((place) => place !== undefined)
    .filter((place) => {
      if (!names.has(place.name)) return names.add(place.name);
      notes.problems.push({
        code: 'duplicate',
        message: `Two places are called ${place.name}; give one another name.`,
        origin: place.origin,
      });
      return false;
    });
  return {
    name,
    caption: node.caption,
    facts: readFacts(
      node.members.filter(ast.isProperty),
      { label: name, title: 'a vehicle', rows: vehicleProperties },
      notes,
    ),
    places,
    loads: node.loads
      .filter((load) => load.name !== undefined)
      .map((load) => ({
        name: load.name,
        facts: readFacts(
          load.members,
          { label: `load ${load.name}`, title: 'a load case', rows: loadProperties },
          notes,
        ),
        origin: originOf(load),
      })),
    readings: node.members
      .filter(ast.isReading)
      .map((reading) => readReading(reading, name, notes))
      .filter((reading) => reading !== undefined),
    origin: originOf(node),
    nameOrigin: originOfProperty(node, 'name'),
  };
}

function readPlace(node: ast.PlaceDeclaration, notes: ReadingNotes): Place | undefined {
  if (node.name === undefined) return undefined;
  return {
    name: node.name,
    motion: node.motion,
    parent: node.parent?.$refText,
    travel: readValue(node.travel, 'length', { part: node.name, fact: 'travel' }, notes),
    origin: originOfProperty(node, 'name'),
  };
}

export function readFluid(node: ast.Fluid, notes: ReadingNotes): FluidFill | undefined {
  if (node.grade === undefined) return undefined;
  const facts = readFacts(
    node.members.filter(ast.isProperty),
    { label: 'the fluid', title: 'a fluid', rows: fluidProperties },
    notes,
  );
  const filled = facts.get('filled');
  return { grade: node.grade, filled: filled?.kind === 'date' ? filled.date : undefined, origin: originOf(node) };
}
