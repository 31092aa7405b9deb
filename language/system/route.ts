/** The way a run takes, as the writer says it; figures work it out. */
import type { Stated } from '../quantity/index.ts';
import type { Origin } from './origin.ts';

/** In the axes of ISO 8855: x forward, y to the left, z up. */
export interface Point {
  readonly x: Stated<'length'>;
  readonly y: Stated<'length'>;
  readonly z: Stated<'length'>;
}

export type Position =
  | { readonly kind: 'height'; readonly height: Stated<'length'>; readonly origin: Origin }
  | { readonly kind: 'point'; readonly point: Point; readonly origin: Origin };

export type RouteStep = (
  | { readonly kind: 'straight'; readonly length: Stated<'length'> }
  | { readonly kind: 'corner'; readonly length: Stated<'length'> }
  | { readonly kind: 'bend'; readonly angle: Stated<'angle'>; readonly radius: Stated<'length'> | undefined }
  | { readonly kind: 'turn'; readonly angle: Stated<'angle'> }
  | { readonly kind: 'coil'; readonly turns: Stated<'number'>; readonly diameter: Stated<'length'> }
  | { readonly kind: 'point'; readonly point: Point; readonly radius: Stated<'length'> | undefined }
) & { readonly origin: Origin };

export interface Route {
  readonly steps: readonly RouteStep[];
  readonly origin: Origin;
}

export type Clip =
  | { readonly kind: 'every'; readonly spacing: Stated<'length'>; readonly origin: Origin }
  | { readonly kind: 'at'; readonly positions: readonly Stated<'length'>[]; readonly origin: Origin };
