import { describe, expect, it } from 'vitest';
import { cycloidDisplacement } from '../../../../src/sim/blower/cycloid-rotors.ts';
import { unevenDriveTorque } from '../../../../src/sim/blower/rotors/drive-torque.ts';
import { blowerTemperatures, gapLoss } from '../../../../src/sim/blower/rotors/heat-growth.ts';
import { rotorPair } from '../../../../src/sim/blower/rotors/rotor-pair.ts';
import { gram, mm, rpm } from '../../../../src/sim/units.ts';
import { sound } from '../../../design/designs.ts';
import { changed, presetEngine } from '../../../helpers/engines.ts';

const lovage = presetEngine('lovage-7').blower;
const parsley = presetEngine('parsley-5').blower;

describe('rotorPair', () => {
  it('sweeps what full cycloids displace, to what a gap of 0.06 mm adds and the mesh carries back', () => {
    const pair = sound(rotorPair(lovage));
    const closed = cycloidDisplacement(lovage.tipDiameter, lovage.rotors.length, 3);
    expect(pair.sweptVolume).toBeGreaterThan(closed);
    expect(pair.sweptVolume - pair.carriedBack).toBeLessThan(closed);
    expect(pair.carriedBack / pair.sweptVolume).toBeLessThan(0.02);
    expect(pair.displacement / closed).toBeCloseTo(1, 2);
  });

  it('keeps the mesh gap of every preset through a turn, and reports its places in the section', () => {
    for (const blower of [lovage, parsley]) {
      const { gap } = sound(rotorPair(blower));
      expect(gap.least / blower.rotors.gaps.mesh).toBeCloseTo(1, 2);
      expect(gap.widest / blower.rotors.gaps.mesh).toBeCloseTo(1, 2);
    }
  });

  it('refuses rotors that cannot mesh, with the place and the tip diameters that can', () => {
    const result = rotorPair(changed(lovage, { tipDiameter: 58 * mm }));
    expect(result.ok).toBe(false);
    if (result.ok) return;
    expect(result.faults[0]!.path).toBe('blower.tipDiameter');
    expect(result.faults[0]!.message).toMatch(
      /run into each other on the pitch circle, [\d.]+ mm from the axis/,
    );
    expect(result.faults[0]!.message).toContain('up to 57.000 mm can');
  });

  it('refuses a bore that leaves no metal at the root', () => {
    const result = rotorPair(changed(lovage, { rotors: { bore: 30 * mm } }));
    expect(result.ok).toBe(false);
    if (!result.ok) expect(result.faults[0]!.message).toContain('leaves no metal: the root is 28.4');
  });

  it('weighs a rotor between its root cylinder and its tip cylinder, and its inertia likewise', () => {
    const pair = sound(rotorPair(parsley));
    const cylinder = (d: number) => (2700 * Math.PI * d * d * parsley.rotors.length) / 4;
    expect(pair.mass / gram).toBeGreaterThan(cylinder(pair.rootDiameter) / gram);
    expect(pair.mass / gram).toBeLessThan(cylinder(parsley.tipDiameter) / gram);
    const solid = (d: number) => (cylinder(d) * d * d) / 8;
    expect(pair.inertia).toBeGreaterThan(solid(pair.rootDiameter));
    expect(pair.inertia).toBeLessThan(solid(parsley.tipDiameter));
  });

  it('takes the whole ripple off with a twist of one pulse, pi / lobes', () => {
    const twisted = sound(rotorPair(changed(lovage, { helixAngle: Math.PI / 3 })));
    expect(twisted.twistedRipple).toBeCloseTo(0, 10);
    expect(twisted.ripple.depth).toBeCloseTo(1 / 13, 4);
  });
});

describe('unevenDriveTorque', () => {
  it('is J times the acceleration: 1e-4 kg m² at 2 : 1 on a crank of 6000 rpm that swings 1 % 7 times a turn, 11.05 N m', () => {
    // rotor speed 2 w (1 + 0.01 sin 7 w t): acceleration 2 w² 0.07 = 55 270 rad/s² at 628.3 rad/s; twice the torque at the crank.
    const speed = 6000 * rpm;
    const acceleration = 2 * speed * speed * 0.07;
    expect(unevenDriveTorque(1e-4, 2, speed, 0.01, 7)).toBeCloseTo(2 * 1e-4 * acceleration, 10);
    expect(unevenDriveTorque(1e-4, 2, speed, 0.01, 7)).toBeCloseTo(11.05, 2);
  });
});

describe('gapLoss', () => {
  const heated = {
    tipDiameter: 60 * mm,
    length: 80 * mm,
    centreDistance: 40 * mm,
    material: 'aluminium',
    casingMaterial: 'aluminium',
    rotorTemperature: 373.15,
    casingTemperature: 333.15,
  } as const;

  it('is 23e-6 × 40 K × 30, 40 and 80 mm where aluminium rotors are 40 K hotter than their casing', () => {
    const { tip, mesh, end } = gapLoss(heated);
    expect(tip / mm).toBeCloseTo(23e-6 * 40 * 30, 10);
    expect(mesh / mm).toBeCloseTo(23e-6 * 40 * 40, 10);
    expect(end / mm).toBeCloseTo(23e-6 * 40 * 80, 10);
  });

  it('is nothing at 20 °C, and a gain where a warm aluminium casing holds steel rotors', () => {
    const cold = gapLoss({ ...heated, rotorTemperature: 293.15, casingTemperature: 293.15 });
    expect(cold).toEqual({ tip: 0, mesh: 0, end: 0 });
    const steel = gapLoss({ ...heated, material: 'steel', rotorTemperature: 333.15 });
    expect(steel.mesh).toBeLessThan(0);
  });

  it('takes the rotors as hot as the hottest gas beside them and the casing half way to the air', () => {
    expect(blowerTemperatures(360, 340, 300)).toEqual({ rotor: 360, casing: 330 });
    expect(blowerTemperatures(320, 340, 300)).toEqual({ rotor: 340, casing: 320 });
  });
});
