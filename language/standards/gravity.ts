/** Standard gravity: what a deceleration "in g" and the weight of a mass are counted with (NIST SP 811, Appendix B). */

import { type Si, si } from '../quantity/dimension.ts';

export const standardGravity: Si<'acceleration'> = si('acceleration', 9.806_65);
