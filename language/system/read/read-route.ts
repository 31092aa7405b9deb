/** Routes, points and clips in the text → the model's. */
import * as ast from '../../grammar/generated/ast.ts';
import type { Clip, Point, Route, RouteStep } from '../route.ts';
import { originOf } from './origins.ts';
import type { ReadingNotes } from './problem-list.ts';
import { readValue, type ValueOwner } from './read-value.ts';

/** A point whose three coordinates could be read. */
export function readPoint(node: ast.Point | undefined, owner: ValueOwner, notes: ReadingNotes): Point | undefined {
  const x = readValue(node?.x, 'length', { ...owner, fact: `${owner.fact} x` }, notes);
  const y = readValue(node?.y, 'length', { ...owner, fact: `${owner.fact} y` }, notes);
  const z = readValue(node?.z, 'length', { ...owner, fact: `${owner.fact} z` }, notes);
  return x && y && z ? { x, y, z } : undefined;
}

/** The route with every step that could be read; undefined where one could not, since a gap would give a wrong length. */
export function readRoute(node: ast.Route, owner: ValueOwner, notes: ReadingNotes): Route | undefined {
  const steps = node.items.map((item) => readStep(item, owner, notes));
  const read = steps.filter((step) => step !== undefined);
  return read.length === steps.length && read.length > 0 ? { steps: read, origin: originOf(node) } : undefined;
}

function readStep(item: ast.RouteItem, owner: ValueOwner, notes: ReadingNotes): RouteStep | undefined {
  const origin = originOf(item);
  const length = (value: ast.Value | undefined, fact: string) => readValue(value, 'length', { ...owner, fact }, notes);
  const angle = (value: ast.Value | undefined, fact: string) => readValue(value, 'angle', { ...owner, fact }, notes);
  if (ast.isStraight(item) || ast.isCorner(item)) {
    const kind = ast.isStraight(item) ? 'straight' : 'corner';
    const read = length(item.length, kind);
    return read && { kind, length: read, origin };
  }
  if (ast.isBend(item)) {
    const read = angle(item.angle, 'bend');
    const radius = length(item.radius, 'bend radius');
    return read && (item.radius === undefined || radius) ? { kind: 'bend', angle: read, radius, origin } : undefined;
  }
  if (ast.isTurn(item)) {
    const read = angle(item.angle, 'turn');
    return read && { kind: 'turn', angle: read, origin };
  }
  if (ast.isCoil(item)) {
    const turns = readValue(item.turns, 'number', { ...owner, fact: 'coil turns' }, notes);
    const diameter = length(item.diameter, 'coil diameter');
    return turns && diameter && { kind: 'coil', turns, diameter, origin };
  }
  if (ast.isRoutePoint(item)) {
    const point = readPoint(item.point, { ...owner, fact: 'route point' }, notes);
    const radius = length(item.radius, 'bend radius');
    return point && (item.radius === undefined || radius) ? { kind: 'point', point, radius, origin } : undefined;
  }
  return undefined;
}

/** The clips of a run, where their spacing or places could be read. */
export function readClip(node: ast.Clip, owner: ValueOwner, notes: ReadingNotes): Clip | undefined {
  const origin = originOf(node);
  if (node.spacing) {
    const spacing = readValue(node.spacing, 'length', { ...owner, fact: 'clip spacing' }, notes);
    return spacing && { kind: 'every', spacing, origin };
  }
  const positions = node.positions
    .map((position) => readValue(position, 'length', { ...owner, fact: 'clip position' }, notes))
    .filter((position) => position !== undefined);
  return positions.length > 0 ? { kind: 'at', positions, origin } : undefined;
}
