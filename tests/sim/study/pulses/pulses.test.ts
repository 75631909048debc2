import { describe, expect, it } from 'vitest';
import type { Model, SolvedPoint } from '../../../../src/sim/index.ts';
import { unevenDriveTorque } from '../../../../src/sim/blower/rotors/drive-torque.ts';
import { rotorInertia } from '../../../../src/sim/blower/rotors/rotor-inertia.ts';
import { rotorPair } from '../../../../src/sim/blower/rotors/rotor-pair.ts';
import { dial } from '../../../../src/sim/study/pulses/dial.ts';
import { earlyFire } from '../../../../src/sim/study/pulses/early-fire.ts';
import { speedFluctuation } from '../../../../src/sim/study/pulses/fluctuation.ts';
import { harmonics } from '../../../../src/sim/study/pulses/harmonics.ts';
import { pinLoads } from '../../../../src/sim/study/pulses/loads.ts';
import { motionOf, movingRows, rodsAt } from '../../../../src/sim/study/pulses/moving-row.ts';
import { inertiasOf, pulses } from '../../../../src/sim/study/pulses/pulses.ts';
import { rowForces } from '../../../../src/sim/study/pulses/row-forces.ts';
import { blowerShaft, outputShaft, shearStress } from '../../../../src/sim/study/pulses/shafts.ts';
import { shaking } from '../../../../src/sim/study/pulses/shaking.ts';
import { torqueOverTurn } from '../../../../src/sim/study/pulses/torque.ts';
import { PARTS, angleOfPart, meanTorque } from '../../../../src/sim/study/pulses/work-curve.ts';
import { TURN, deg } from '../../../../src/sim/units.ts';
import { at, changed, modelOf, presetEngine, solveAt, solved } from '../../../helpers/engines.ts';
import { sound } from '../../../design/designs.ts';

const lovage = presetEngine('lovage-7');
const model = modelOf(lovage);
const point = solved(solveAt(lovage, 6000));
const rows = movingRows(model);
const torque = torqueOverTurn(model, point, rows);
const { speed } = at(6000);

/** An engine of one row of equal plain rods, evenly spaced. */
const plainRow = (count: number): Model => {
  const row = lovage.train.rows[0]!;
  const cylinders = Array.from({ length: count }, (_, j) => ({
    ...row.cylinders[j % 7]!,
    axisAngle: (TURN * j) / count,
    knuckleAngle: 0,
    rodLength: lovage.train.masterRodLength,
  }));
  return modelOf(
    changed(lovage, {
      train: { knuckleRadius: 0, rows: [{ ...row, cylinders }] },
      masses: { rod: 0.05, rodUpperShare: 0.3, piston: 0.06, throw: 0.1 },
    }),
  );
};

/** A polytrope up and another down, the same in every cylinder: p = c V^-n, so its work has a closed form. */
function equalPressures(of: Model, up: number, down: number): Pick<SolvedPoint, 'traces'> & SolvedPoint {
  const n = 1.3;
  const { ambient } = of.engine;
  const angle = Float64Array.from({ length: 1261 }, (_, i) => (i * TURN) / 1260);
  const gasTorque = angle.map(() => 0);
  const gasWork = angle.map(() => 0);
  const cylinders = of.geometry.cylinders.map(({ tdc, bdc, travel, clearanceVolume }) => {
    const volumeAt = (theta: number) => {
      travel.evaluate(theta);
      return clearanceVolume + of.geometry.boreArea * travel.value;
    };
    const reaches = [bdc, tdc].map(volumeAt) as [number, number];
    const downStroke = (bdc - tdc + TURN) % TURN;
    /** Work since own top dead centre. */
    const workAt = (theta: number) => {
      const turnsBefore = Math.floor((theta - tdc) / TURN);
      const own = theta - tdc - turnsBefore * TURN;
      const part = (c: number, from: number, to: number) =>
        (c / (1 - n)) * (to ** (1 - n) - from ** (1 - n)) - ambient.pressure * (to - from);
      const V = volumeAt(theta);
      const whole = part(down, reaches[1], reaches[0]) + part(up, reaches[0], reaches[1]);
      const here =
        own < downStroke
          ? part(down, reaches[1], V)
          : part(down, reaches[1], reaches[0]) + part(up, reaches[0], V);
      return turnsBefore * whole + here;
    };
    const pressure = angle.map((theta, i) => {
      const own = (((theta - tdc) % TURN) + TURN) % TURN;
      const p = (own < downStroke ? down : up) * volumeAt(theta) ** -n;
      gasTorque[i]! += (p - ambient.pressure) * of.geometry.boreArea * travel.slope;
      gasWork[i]! += workAt(theta) - workAt(0);
      return p;
    });
    return { ...point.traces.cylinders[0]!, pressure };
  });
  const none = angle.map(() => 0);
  return {
    ...point,
    turnsPerPeriod: 1,
    traces: { ...point.traces, angle, cylinders, gasTorque, gasWork, blowerTorque: none, blowerWork: none },
  };
}

describe('torqueOverTurn', () => {
  it('adds up to imep × swept volume, and to brake, friction and blower, within 1e-6', () => {
    const { engine, blower } = point;
    const gas = (engine.imep * engine.sweptVolume) / TURN;
    expect(Math.abs(torque.mean.gas / gas - 1)).toBeLessThan(1e-6);
    const brakeAndLosses =
      engine.brakePower / speed / lovage.friction.outputGearEfficiency +
      (engine.fmep * engine.sweptVolume) / TURN +
      blower.shaftPower / speed;
    expect(Math.abs(torque.mean.gas / brakeAndLosses - 1)).toBeLessThan(1e-6);
    expect(Math.abs(torque.mean.total / engine.torque - 1)).toBeLessThan(1e-6);
  });

  it('gives the blower’s shaft power over the speed as its mean, and nothing for inertia', () => {
    expect(Math.abs((torque.mean.blower * speed) / point.blower.shaftPower - 1)).toBeLessThan(1e-6);
    expect(Math.abs(meanTorque(torque.work.inertia))).toBeLessThan(1e-9 * torque.mean.gas);
  });

  it('reads torque and work of one turn as the same thing: trapezia of the torque come near the work', () => {
    const { angle, total, work } = torque;
    let area = 0;
    for (let i = 1; i < angle.length; i++)
      area += 0.5 * (total[i]! + total[i - 1]!) * (angle[i]! - angle[i - 1]!);
    expect(area / work.total[work.total.length - 1]!).toBeCloseTo(1, 2);
  });

  it('counts reversals of a single cylinder and none of seven', () => {
    const one = presetEngine('caraway-1');
    const single = torqueOverTurn(modelOf(one), solved(solveAt(one, 6000)), movingRows(modelOf(one)));
    expect(single.reversals).toBeGreaterThanOrEqual(2);
    expect(single.least).toBeLessThan(0);
    expect(single.negativeShare).toBeGreaterThan(0.2);
    expect(torque.reversals).toBe(0);
    expect(torque.least).toBeGreaterThan(0);
  });
});

describe('motionOf', () => {
  it.each([
    ['articulated rods', model],
    ['plain rods', plainRow(5)],
  ])('gives as slope what differences of the energy give: %s', (_, of) => {
    const step = 1e-4;
    for (const row of movingRows(of))
      for (let theta = 0.1; theta < TURN; theta += 0.37) {
        const of = (angle: number) => motionOf(row, rodsAt(row, angle));
        const difference = (of(theta + step).inertia - of(theta - step).inertia) / (2 * step);
        expect(Math.abs(of(theta).slope - difference)).toBeLessThan(1e-7 * of(theta).inertia);
      }
  });
});

describe('rodAccelerations', () => {
  it('puts the gudgeon pin where PistonMotion has it, with its speed', () => {
    for (const { motion, pinOffset, cylinderIndex } of model.geometry.cylinders)
      for (let theta = 0; theta < TURN; theta += 0.3) {
        motion.evaluate(theta + pinOffset);
        const { gudgeonPin, axis } = rodsAt(rows[0]!, theta)[cylinderIndex]!;
        expect(gudgeonPin.at.x * axis.x + gudgeonPin.at.y * axis.y).toBeCloseTo(motion.height, 14);
        expect(gudgeonPin.rate.x * axis.x + gudgeonPin.rate.y * axis.y).toBeCloseTo(motion.slope, 14);
      }
  });
});

describe('rowForces', () => {
  it('turns the crank with the torque of gas and inertia by virtual work', () => {
    const row = rows[0]!;
    for (let theta = 0; theta < TURN; theta += 0.21) {
      const gas = row.rods.map((_, j) => 500 + 300 * Math.sin(theta + j));
      const rods = rodsAt(row, theta);
      const virtual = rods.reduce(
        (sum, { gudgeonPin, axis }, j) =>
          sum - gas[j]! * (gudgeonPin.rate.x * axis.x + gudgeonPin.rate.y * axis.y),
        -speed * speed * motionOf(row, rods).slope,
      );
      expect(Math.abs(rowForces(row, rods, speed, gas).torque - virtual)).toBeLessThan(1e-10);
    }
  });

  it('pushes case and crank apart with gas alone: liners and heads bear what the pin bears', () => {
    const row = rows[0]!;
    const gas = row.rods.map((_, j) => 400 + 90 * j);
    const rods = rodsAt(row, 1.1);
    const forces = rowForces(row, rods, 0, gas);
    const onCase = forces.rods.reduce(
      (sum, { side }, j) => {
        const { axis } = rods[j]!;
        return { x: sum.x + gas[j]! * axis.x - side * axis.y, y: sum.y + gas[j]! * axis.y + side * axis.x };
      },
      { x: 0, y: 0 },
    );
    expect(forces.pin.x).toBeCloseTo(-onCase.x, 9);
    expect(forces.pin.y).toBeCloseTo(-onCase.y, 9);
  });

  it('bends no plain rod, and a master rod by the moment of its knuckle loads', () => {
    const plain = movingRows(plainRow(5))[0]!;
    expect(rowForces(plain, rodsAt(plain, 1), speed, [1, 2, 3, 4, 5]).bending).toBe(0);
    const row = rows[0]!;
    const rods = rodsAt(row, 1);
    const forces = rowForces(
      row,
      rods,
      speed,
      row.rods.map(() => 1000),
    );
    const pin = rods[0]!.crankPin.at;
    const moment = forces.rods.reduce((sum, { knuckle }, j) => {
      if (!knuckle) return sum;
      const arm = { x: rods[j]!.lowerPin.at.x - pin.x, y: rods[j]!.lowerPin.at.y - pin.y };
      return sum + arm.x * knuckle.y - arm.y * knuckle.x;
    }, 0);
    const left = 1 - lovage.train.knuckleRadius / lovage.train.masterRodLength;
    expect(forces.bending).toBeCloseTo(left * Math.abs(moment), 9);
    expect(forces.bending).toBeGreaterThan(1);
  });
});

describe('harmonics', () => {
  it.each([3, 5, 7, 9])(
    'of %i equal cylinders with plain rods, evenly spaced, fall on multiples of their number',
    (count) => {
      const of = plainRow(count);
      const same = equalPressures(of, 30, 75);
      const turn = torqueOverTurn(of, same, movingRows(of));
      expect(turn.mean.gas).toBeGreaterThan(1);
      const all = harmonics(turn.work.gas, 1, 24);
      const greatest = Math.max(...all.map(({ amplitude }) => amplitude));
      for (const { order, amplitude } of all)
        if (order % count !== 0) expect(amplitude, `order ${order}`).toBeLessThan(1e-6 * greatest);
      expect(all[count - 1]!.amplitude).toBe(greatest);
    },
  );

  it('finds amplitude and phase of whole and broken orders', () => {
    const work = Float64Array.from({ length: 2 * PARTS + 1 }, (_, part) => {
      const theta = angleOfPart(part);
      return 40 * theta + (6 / 1.5) * Math.sin(1.5 * theta - 0.4) + (3 / 4) * Math.sin(4 * theta - 2);
    });
    const found = harmonics(work, 2, 6);
    expect(meanTorque(work)).toBeCloseTo(40, 12);
    for (const { order, amplitude, phase } of found) {
      const [expected, lag] = order === 1.5 ? [6, 0.4] : order === 4 ? [3, 2] : [0, NaN];
      expect(amplitude).toBeCloseTo(expected, 10);
      if (expected > 0) expect(phase).toBeCloseTo(lag, 10);
    }
  });
});

describe('speedFluctuation', () => {
  it('is 2 A / (n J ω²) for a torque that swings as A cos nθ', () => {
    const work = Float64Array.from(
      { length: PARTS + 1 },
      (_, part) => 10 * angleOfPart(part) + (30 / 5) * Math.sin(5 * angleOfPart(part)),
    );
    const inertias = { ...inertiasOf(model, rows), total: 0.01 };
    const found = speedFluctuation(work, inertias, 100);
    expect(found.energySwing).toBeCloseTo(2 * (30 / 5), 9);
    expect(found.coefficient).toBeCloseTo((2 * 30) / (5 * 0.01 * 100 ** 2), 9);
    expect(Math.max(...found.relativeSpeed) - Math.min(...found.relativeSpeed)).toBeCloseTo(
      found.coefficient,
      12,
    );
  });
});

describe('shaking', () => {
  it.each([3, 4, 5, 7, 9])(
    'of %i equal plain rods turns at first order with N/2 m r ω², and nothing turns back',
    (count) => {
      const of = plainRow(count);
      const found = shaking(movingRows(of), speed, 1);
      const { piston, rod, rodUpperShare } = of.engine.masses;
      const r = of.engine.train.crankRadius;
      const oscillating = (count / 2) * (piston + rod * rodUpperShare) * r;
      const rotating = (0.1 + count * rod * (1 - rodUpperShare)) * r;
      const first = found.rows[0]!.bare[0]!;
      expect(first.forward / ((oscillating + rotating) * speed ** 2)).toBeCloseTo(1, 9);
      expect(first.backward).toBeLessThan(1e-9 * first.forward);
      expect(found.counterweights[0]!.rotating).toBeCloseTo(rotating, 12);
      expect(found.counterweights[0]!.whole).toBeCloseTo(rotating + oscillating, 12);
      expect(found.rows[0]!.balanced[0]!.greatest).toBeLessThan(1e-9 * first.forward);
    },
  );

  it('leaves half of a single cylinder’s first order, turning back, when the other half is balanced', () => {
    const of = plainRow(1);
    const found = shaking(movingRows(of), speed, 1).rows[0]!;
    const { piston, rod, rodUpperShare } = of.engine.masses;
    const half = 0.5 * (piston + rod * rodUpperShare) * of.engine.train.crankRadius * speed ** 2;
    expect(found.balanced[0]!.forward).toBeLessThan(1e-9 * half);
    expect(found.balanced[0]!.backward / half).toBeCloseTo(1, 9);
  });

  it('of two opposed rows cancels the first-order force and leaves a moment of force times spacing', () => {
    const one = plainRow(5);
    const row = one.engine.train.rows[0]!;
    const two = modelOf(
      changed(one.engine, {
        train: { rows: [row, { ...row, throwAngle: 180 * deg }] },
        masses: { rowSpacing: 0.07 },
      }),
    );
    const found = shaking(movingRows(two), speed, 0);
    const single = found.rows[0]!.bare[0]!.forward;
    expect(found.force.bare[0]!.greatest).toBeLessThan(1e-9 * single);
    expect(found.moment.bare[0]!.greatest / (single * 0.07)).toBeCloseTo(1, 9);
  });
});

describe('pinLoads', () => {
  const whole = pulses(model, point);

  it('turns the crank with the pin’s onward force: gas and inertia torque of the point, over the throw', () => {
    const { onward } = whole.loads.rows[0]!;
    torque.angle.forEach((_, i) => {
      const expected = (torque.gas[i]! + torque.inertia[i]!) / lovage.train.crankRadius;
      expect(Math.abs(onward[i]! - expected)).toBeLessThan(2e-3);
    });
  });

  it('halves a single row’s load between its two mains', () => {
    const { mains, rows } = pinLoads(
      modelOf(changed(lovage, { masses: { throw: 0 } })),
      point,
      movingRows(modelOf(changed(lovage, { masses: { throw: 0 } }))),
      [{ whole: 0, fitted: 0, angle: 0, rotating: 0 }],
    );
    expect(mains).toHaveLength(2);
    for (const { bare, fitted } of mains) {
      expect(bare.peak).toBeCloseTo(rows[0]!.pin.peak / 2, 9);
      expect(fitted.peak).toBeCloseTo(bare.peak, 9);
    }
  });

  it('gives a knuckle load to every rod but the master, of the size of its push', () => {
    whole.loads.cylinders.forEach(({ knuckle, push }, j) => {
      if (j === 0) return expect(knuckle).toBeNull();
      // The lower half of the rod is all that lies between.
      return expect(Math.abs(knuckle!.peak / push - 1)).toBeLessThan(0.15);
    });
  });
});

describe('shafts', () => {
  const fluctuation = pulses(model, point).fluctuation;

  it('stresses a shaft of 20 mm by 100 N m with 63.66 MPa', () => {
    expect(shearStress(-100, 0.02)).toBeCloseTo(63.66e6, -4);
  });

  it('passes all of the swing to a load of endless inertia, and the mean alone to one of none', () => {
    const shaft = (load: number) =>
      outputShaft(
        torque,
        { inertias: { ...fluctuation.inertias, load, total: 0.001 + load } },
        lovage.load,
        1,
        null,
      );
    expect(shaft(1e6).torque.peak).toBeCloseTo(Math.max(...torque.total), 6);
    expect(shaft(0).torque.peak).toBeCloseTo(torque.mean.total, 9);
    expect(shaft(0).torque.least).toBeCloseTo(torque.mean.total, 9);
  });

  it('gears the torque of the shaft, and bears the crank’s on the teeth', () => {
    const geared = { ...lovage.load, gearRatio: 2, gearPitchDiameter: 0.05 };
    const kick = 50;
    const found = outputShaft(torque, fluctuation, geared, 0.98, kick);
    expect(found.torque.mean).toBeCloseTo(2 * 0.98 * torque.mean.total, 9);
    expect(found.tooth!.mean).toBeCloseTo(torque.mean.total / 0.025, 6);
    expect(found.earlyFire!.torque).toBeCloseTo(2 * geared.shockFactor * kick, 9);
    expect(found.earlyFire!.tooth).toBeCloseTo((geared.shockFactor * kick) / 0.025, 6);
  });

  it('asks the blower’s shaft for what its gas asks on the mean, and for its rotors’ swing', () => {
    const found = blowerShaft(torque, fluctuation, lovage.blower, model.drive, 2, null);
    const { ratio, efficiency } = model.drive;
    expect(found.torque.mean * lovage.blower.count * ratio * speed).toBeCloseTo(
      point.blower.shaftPower * efficiency,
      6,
    );
    // A torque swinging as A cos nθ makes the crank swing by eps = A / (n J ω²): the rotors ask J_r ratio² n eps ω².
    const [A, n] = [20, 7];
    const swinging = {
      total: torque.angle.map((theta) => torque.mean.total + A * Math.cos(n * theta)),
      firstStage: { asked: torque.angle.map(() => torque.mean.blower), mean: torque.mean.blower },
      mean: torque.mean,
    };
    const alone = blowerShaft(swinging, fluctuation, lovage.blower, model.drive, 2, null);
    const eps = A / (n * fluctuation.inertias.total * speed ** 2);
    const rotor = 2 * lovage.blower.count * rotorInertia(lovage.blower)!;
    const asked = unevenDriveTorque(rotor, ratio, speed, eps, n) / (ratio * lovage.blower.count);
    expect(alone.torque.peak - alone.torque.mean).toBeCloseTo(asked, 9);
  });

  it('weighs a rotor as the whole pair’s study does', () => {
    const pair = sound(rotorPair(lovage.blower));
    expect(rotorInertia(lovage.blower)! / pair.inertia).toBeCloseTo(1, 3);
  });
});

describe('earlyFire', () => {
  it('throws back with the pressure of its own charge burned before top dead centre', () => {
    const { index, beforeTdc, pressure, torque: kick } = earlyFire(model, point)!;
    const { travel, tdc } = model.geometry.cylinders[index]!;
    travel.evaluate(tdc - beforeTdc);
    const lever = model.geometry.boreArea * Math.abs(travel.slope);
    expect(kick).toBeCloseTo((pressure - lovage.ambient.pressure) * lever, 9);
    expect(beforeTdc).toBeGreaterThan(5 * deg);
    expect(beforeTdc).toBeLessThan(80 * deg);
    // Constant-volume combustion of a petrol mixture raises pressure four- to eightfold.
    const trapped = point.cylinders[index]!.pressureAtExhaustClosing;
    expect(pressure / trapped).toBeGreaterThan(4);
    expect(pressure / trapped).toBeLessThan(60);
  });
});

describe('dial', () => {
  it('has gaps that add up to a turn, and even ones for equal plain rods', () => {
    const even = dial(plainRow(5).geometry);
    for (const { least, most, even: wanted } of Object.values(even.gaps)) {
      expect(least).toBeCloseTo(72 * deg, 9);
      expect(most).toBeCloseTo(72 * deg, 9);
      expect(wanted).toBeCloseTo(72 * deg, 12);
    }
    const uneven = dial(model.geometry);
    expect(uneven.gaps.topDeadCentre.least).toBeLessThan(uneven.gaps.topDeadCentre.even - deg);
    expect(uneven.events[0]!.index).toBe(0);
    expect(uneven.events.map(({ index }) => index).sort()).toEqual([0, 1, 2, 3, 4, 5, 6]);
  });
});
