/** Places as text, for whoever keeps them between two pictures without reading them. */
import type { Placement } from './placed.ts';
import type { Point } from './symbols/drawing.ts';

export const placementText = (placement: Placement): string => JSON.stringify(placement.pivots);

/** Undefined for anything that is not such a text; the picture is then placed afresh. */
export function readPlacement(text: string): Placement | undefined {
  const read = parsed(text);
  if (typeof read !== 'object' || read === null || Array.isArray(read)) return undefined;
  const pivots: Record<string, Point> = {};
  for (const [id, at] of Object.entries(read)) {
    if (!isPoint(at)) return undefined;
    pivots[id] = { x: at.x, y: at.y };
  }
  return { pivots };
}

function parsed(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return undefined;
  }
}

function isPoint(value: unknown): value is Point {
  if (typeof value !== 'object' || value === null || !('x' in value) || !('y' in value)) return false;
  return Number.isFinite(value.x) && Number.isFinite(value.y);
}
