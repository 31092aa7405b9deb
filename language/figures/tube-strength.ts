/**
 * Pressures that a straight tube without flaws bears, by its outside diameter, wall and strength; SI throughout.
 * Symbols after the handbooks: D outside diameter, t wall, S tensile strength, Z = (D / (D − 2t))². All give NaN where
 * the wall leaves no bore or a size is not more than zero.
 * Sources: Barlow as in tube makers' notes; Lamé's thick cylinder as in Boresi & Schmidt, Advanced Mechanics of
 * Materials, chapter 11; first yield after von Mises with closed ends.
 */
import { type Si, si } from '../quantity/index.ts';

type Length = Si<'length'>;
type Stress = Si<'pressure'>;

/** Burst after Barlow with the outside diameter, the cautious form: p = 2·S·t / D. */
export function barlowBurst(diameter: Length, wall: Length, tensile: Stress): Stress {
  return isTube(diameter, wall) ? si('pressure', (2 * tensile * wall) / diameter) : none;
}

/** Pressure at which the hoop stress at the bore of a thick wall (Lamé) reaches S: p = S·(Z − 1) / (Z + 1). */
export function lameBurst(diameter: Length, wall: Length, tensile: Stress): Stress {
  if (!isTube(diameter, wall)) return none;
  const z = (diameter / (diameter - 2 * wall)) ** 2;
  return si('pressure', (tensile * (z - 1)) / (z + 1));
}

/** Pressure at which a closed thick tube begins to yield at its bore (von Mises): p = σy / √3 · (1 − 1 / Z). */
export function firstYield(diameter: Length, wall: Length, yieldStrength: Stress): Stress {
  if (!isTube(diameter, wall)) return none;
  return si('pressure', (yieldStrength / Math.sqrt(3)) * (1 - ((diameter - 2 * wall) / diameter) ** 2));
}

const isTube = (diameter: Length, wall: Length): boolean => wall > 0 && diameter > 2 * wall;
const none = si('pressure', Number.NaN);
