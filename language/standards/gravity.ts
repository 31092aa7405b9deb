/** Standard gravity: what a deceleration "in g" and the weight of a mass are counted with. */

import { type Si, si } from '../quantity/dimension.ts';
import { published } from './source.ts';

export const standardGravity: Si<'acceleration'> = si('acceleration', 9.806_65);

export const gravitySource = published('NIST Special Publication 811, Appendix B: standard acceleration of free fall');
