/** Lets the tables be written in the units their sources print; everything they give out is SI (NIST SP 811 factors). */

import { type Si, si } from '../quantity/dimension.ts';

/** Metres from inches (exact, 25.4 mm). */
export const inch = (inches: number): Si<'length'> => si('length', inches * 0.0254);

/** Metres from millimetres. */
export const mm = (millimetres: number): Si<'length'> => si('length', millimetres / 1000);

/** Radians from degrees. */
export const degrees = (angle: number): Si<'angle'> => si('angle', (angle * Math.PI) / 180);

/** Pascals from megapascals. */
export const megapascal = (pressure: number): Si<'pressure'> => si('pressure', pressure * 1e6);

/** Pascals from pounds-force per square inch (6894.757 Pa). */
export const psi = (pressure: number): Si<'pressure'> => si('pressure', pressure * 6894.757293168361);

/** Kelvin from degrees Celsius. */
export const celsius = (temperature: number): Si<'temperature'> => si('temperature', temperature + 273.15);
