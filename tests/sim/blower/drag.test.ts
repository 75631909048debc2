import { describe, expect, it } from 'vitest';
import { dragTorque } from '../../../src/sim/blower/drag.ts';

const blower = { count: 2, dragTorque: 0.02, dragWithSpeed: 0.04, dragWithSquare: 0.08, maxSpeed: 2000 };

describe('dragTorque', () => {
  it('is 0.02, 0.06 and 0.14 N m for each of two blowers at rest, half and full speed', () => {
    expect(dragTorque(blower, 0)).toBeCloseTo(0.04, 12);
    expect(dragTorque(blower, 1000)).toBeCloseTo(2 * (0.02 + 0.02 + 0.02), 12);
    expect(dragTorque(blower, 2000)).toBeCloseTo(0.28, 12);
  });
});
