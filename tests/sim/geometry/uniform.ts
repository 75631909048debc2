import fc from 'fast-check';

/** Numbers spread evenly over a range, ends included: `fc.double` crowds around zero, where geometry is dull. */
export const uniform = (min: number, max: number): fc.Arbitrary<number> =>
  fc.integer({ min: 0, max: 1_000_000 }).map((part) => min + ((max - min) * part) / 1_000_000);
