/** Where in the text something that the picture shows is declared. */
import type { Origin } from '../system/origin.ts';
import type { PortId } from '../system/part.ts';
import { partOf, type System } from '../system/system.ts';
import { linkId, screwedId } from './reading/lines.ts';

/** `id` is the `data-id` of a part, sub-part, line, nut or open end; undefined where the system has no such thing. */
export function originOf(system: System, id: string): Origin | undefined {
  const parts: ReadonlyMap<string, { readonly nameOrigin: Origin }> = system.partById;
  const ports: ReadonlyMap<string, { readonly id: PortId }> = system.portById;
  const part = parts.get(id);
  if (part !== undefined) return part.nameOrigin;
  const port = ports.get(id);
  if (port !== undefined) return partOf(system, port.id)?.nameOrigin;
  const joint = system.joints.find(({ a, b }) => screwedId(a, b) === id);
  return (joint ?? system.links.find((link) => linkId(link) === id))?.origin;
}
