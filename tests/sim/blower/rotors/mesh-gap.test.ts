import { describe, expect, it } from 'vitest';
import { meshGap } from '../../../../src/sim/blower/rotors/mesh-gap.ts';
import { rotorOutline } from '../../../../src/sim/blower/rotors/outline.ts';
import { measurePolygon } from '../../../../src/sim/blower/rotors/polygon.ts';
import { SECTIONS, nameOf, sectionAt } from './sections.ts';

const um = 1e-6;
const named = SECTIONS.map((section) => [nameOf(section), section] as const);

describe('meshGap', () => {
  it.each(named)('%s: stays at the stated 60 µm through a full mesh turn, within 0.5 µm', (_, section) => {
    const corners = rotorOutline(section, 30 * um, 0.2 * um);
    const { least, widest } = meshGap(corners, section.lobes, 2 * section.pitchRadius, 12);
    expect(least / um).toBeGreaterThan(59.5);
    expect(widest / um).toBeLessThan(60.5);
  });

  it('finds 10 µm more where the axes stand 10 µm apart, and interference where they stand too close, with its place', () => {
    const section = sectionAt('cycloidal', 2, 1);
    const corners = rotorOutline(section, 30 * um, 0.2 * um);
    const apart = meshGap(corners, 2, 2 * section.pitchRadius + 10 * um, 12);
    expect(apart.widest / um).toBeGreaterThan(69);
    expect(apart.widest / um).toBeLessThan(70.5);
    const close = meshGap(corners, 2, 2 * section.pitchRadius - 100 * um, 12);
    expect(close.least / um).toBeLessThan(-35);
    expect(close.least / um).toBeGreaterThan(-41);
    expect(close.at.radius).toBeGreaterThan(0.0095);
    expect(close.at.radius).toBeLessThan(0.0305);
  });

  it('finds that rotors out of phase by 2° cut into each other', () => {
    const section = sectionAt('circular arc', 3, 0.9);
    const corners = rotorOutline(section, 30 * um, 0.5 * um);
    const late = corners.map(({ x, y }) => ({
      x: x * Math.cos(0.035) - y * Math.sin(0.035),
      y: x * Math.sin(0.035) + y * Math.cos(0.035),
    }));
    // Both rotors turned by the same angle: the phase between them is off by twice that.
    expect(meshGap(late, 3, 2 * section.pitchRadius, 12).least).toBeLessThan(-100 * um);
  });
});

describe('rotorOutline', () => {
  it('moved in by d encloses less by perimeter × d − π d², to a millionth of the area', () => {
    const d = 30 * um;
    for (const section of SECTIONS) {
      const ideal = measurePolygon(rotorOutline(section, 0, 0.01 * um));
      const moved = measurePolygon(rotorOutline(section, d, 0.01 * um));
      const less = ideal.perimeter * d - Math.PI * d * d;
      expect(Math.abs(ideal.area - moved.area - less) / ideal.area).toBeLessThan(1e-6);
    }
  });

  it('has no corner twice', () => {
    for (const section of SECTIONS) {
      const corners = rotorOutline(section, 30 * um, 4 * um);
      corners.forEach((a, i) => {
        const b = corners[(i + 1) % corners.length]!;
        expect(Math.hypot(a.x - b.x, a.y - b.y)).toBeGreaterThan(0);
      });
    }
  });
});

describe('measurePolygon', () => {
  it('of a square of 2 about the origin: area 4, polar moment 8/3, perimeter 8', () => {
    const square = [
      [1, -1],
      [1, 1],
      [-1, 1],
      [-1, -1],
    ].map(([x, y]) => ({ x: x!, y: y! }));
    expect(measurePolygon(square)).toEqual({ area: 4, polarMoment: expect.closeTo(8 / 3, 12), perimeter: 8 });
  });
});
