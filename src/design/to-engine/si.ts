import type { InSi } from '../in-si.ts';
import type { Design } from '../schema/design.ts';

/** A design without units on its keys, all in base SI. */
export type Si = InSi<Design>;
