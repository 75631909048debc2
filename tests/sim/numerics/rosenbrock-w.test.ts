import { describe, expect, it } from 'vitest';
import type { RosenbrockW } from '../../../src/sim/numerics/rosenbrock-w.ts';
import { ros2, ros34pw2 } from '../../../src/sim/numerics/rosenbrock-w.ts';

type Vector = readonly number[];
type Matrix = readonly Vector[];
interface Problem {
  readonly f: (t: number, y: Vector) => Vector;
  readonly jacobian: (t: number, y: Vector) => Matrix;
  readonly timeSlope: (t: number, y: Vector) => Vector;
}

/** One step as rosenbrock-w.ts states it, with a full 2 x 2 matrix; also the norm of the error estimate. */
function step(method: RosenbrockW, { f, jacobian, timeSlope }: Problem, t: number, y: Vector, h: number) {
  const { stages: s, gamma, alpha, a, c, m, d, e } = method;
  const J = jacobian(t, y);
  const ft = timeSlope(t, y);
  const u: number[][] = [];
  const w = gamma * h;
  for (let i = 0; i < s; i++) {
    const argument = y.map((value, k) => u.reduce((sum, uj, j) => sum + a[i * s + j] * uj[k], value));
    const rate = f(t + alpha[i] * h, argument);
    const right = rate.map(
      (value, k) =>
        w * (value + d[i] * h * ft[k]) + gamma * u.reduce((sum, uj, j) => sum + c[i * s + j] * uj[k], 0),
    );
    u.push(solve2(J, w, right));
  }
  const combine = (weights: Float64Array, k: number) => u.reduce((sum, ui, i) => sum + weights[i] * ui[k], 0);
  return {
    y: y.map((value, k) => value + combine(m, k)),
    error: Math.hypot(...y.map((_, k) => combine(e, k))),
  };
}

/** (I - w J)^-1 b for one or two unknowns. */
function solve2(J: Matrix, w: number, b: Vector): number[] {
  if (b.length === 1) return [b[0] / (1 - w * J[0][0])];
  const [p, q, r, s] = [1 - w * J[0][0], -w * J[0][1], -w * J[1][0], 1 - w * J[1][1]];
  const determinant = p * s - q * r;
  return [(s * b[0] - q * b[1]) / determinant, (p * b[1] - r * b[0]) / determinant];
}

function integrate(method: RosenbrockW, problem: Problem, y0: Vector, end: number, steps: number): Vector {
  let y = y0;
  for (let i = 0; i < steps; i++) y = step(method, problem, (i * end) / steps, y, end / steps).y;
  return y;
}

const exactSlopes: Problem = {
  f: (t, [x, z]) => [-x * z + Math.cos(3 * t), x * x - z + Math.sin(x) * t],
  jacobian: (t, [x, z]) => [
    [-z, -x],
    [2 * x + Math.cos(x) * t, -1],
  ],
  timeSlope: (t, [x]) => [-3 * Math.sin(3 * t), Math.sin(x)],
};
const zeroMatrix: Matrix = [
  [0, 0],
  [0, 0],
];
/** Nothing to do with the true one. */
const wrongMatrix: Matrix = [
  [-3, 1.5],
  [0.7, -2],
];
const START: Vector = [1, 0.5];
const END = 2;

/** Classical Runge-Kutta with 20 000 steps: exact to about 1e-14. */
const exactEnd = ((): Vector => {
  const { f } = exactSlopes;
  const n = 20_000;
  const h = END / n;
  const along = (y: Vector, k: Vector, s: number) => y.map((value, i) => value + s * k[i]);
  let y = START;
  for (let i = 0; i < n; i++) {
    const t = i * h;
    const k1 = f(t, y);
    const k2 = f(t + h / 2, along(y, k1, h / 2));
    const k3 = f(t + h / 2, along(y, k2, h / 2));
    const k4 = f(t + h, along(y, k3, h));
    y = y.map((value, j) => value + (h / 6) * (k1[j] + 2 * k2[j] + 2 * k3[j] + k4[j]));
  }
  return y;
})();

const errorOf = (method: RosenbrockW, problem: Problem, steps: number): number =>
  Math.hypot(...integrate(method, problem, START, END, steps).map((value, i) => value - exactEnd[i]));

const observedOrder = (method: RosenbrockW, problem: Problem): number =>
  Math.log2(errorOf(method, problem, 200) / errorOf(method, problem, 400));

const matrices: [string, Problem['jacobian']][] = [
  ['the exact', exactSlopes.jacobian],
  ['no', () => zeroMatrix],
  ['a wrong', () => wrongMatrix],
];
const timeSlopes: [string, Problem['timeSlope']][] = [
  ['the exact', exactSlopes.timeSlope],
  ['no', () => [0, 0]],
  ['a wrong', () => [4, -5]],
];

describe.each([
  ['ros2', ros2, 2],
  ['ros34pw2', ros34pw2, 3],
] as const)('%s', (_, method, order) => {
  it(`states order ${order}`, () => {
    expect(method.order).toBe(order);
  });

  for (const [matrixName, jacobian] of matrices)
    for (const [slopeName, timeSlope] of timeSlopes)
      it(`has order ${order}, observed within 0.15, with ${matrixName} Jacobian and ${slopeName} time slope`, () => {
        const observed = observedOrder(method, { ...exactSlopes, jacobian, timeSlope });
        // Never less; a slope above it would only say that the leading term is small here.
        expect(observed).toBeGreaterThan(order - 0.15);
        expect(observed).toBeLessThan(order + 0.35);
      });

  it(`estimates an error that falls with the step to the power ${order}, as its embedded method of order ${order - 1} has it`, () => {
    const estimate = (h: number) => step(method, exactSlopes, 0.3, START, h).error;
    expect(Math.log2(estimate(0.01) / estimate(0.005))).toBeGreaterThan(order - 0.1);
    expect(Math.log2(estimate(0.01) / estimate(0.005))).toBeLessThan(order + 0.1);
  });

  it('damps a very stiff mode to below 1e-6 in one step: y1/y0 tends to 0 with lambda h to minus infinity', () => {
    const growth = (z: number) => step(method, linear(z), 0, [1], 1).y[0];
    expect(Math.abs(growth(-1e8))).toBeLessThan(1e-6);
    expect(Math.abs(growth(-1e4))).toBeLessThan(1e-2);
  });

  it('never grows a decaying mode: |y1/y0| <= 1 for lambda h from -1e-3 to -1e6', () => {
    for (let power = -3; power <= 6; power += 0.05) {
      expect(Math.abs(step(method, linear(-(10 ** power)), 0, [1], 1).y[0])).toBeLessThanOrEqual(1);
    }
  });

  it("follows y = sin t on y' = lambda (y - sin t) + cos t at lambda h = -1e5 from a start far off", () => {
    const lambda = -1e6;
    const problem: Problem = {
      f: (t, [y]) => [lambda * (y - Math.sin(t)) + Math.cos(t)],
      jacobian: () => [[lambda]],
      timeSlope: (t) => [-lambda * Math.cos(t) - Math.sin(t)],
    };
    const [end] = integrate(method, problem, [50], 2, 20);
    // The start is forgotten; h^2/2 max|g''| = 0.005 is what the second order leaves of a forced motion at h = 0.1.
    expect(Math.abs(end - Math.sin(2))).toBeLessThan(5e-3);
  });

  it('keeps a sum that f and J both conserve to round-off over 1000 steps, the Jacobian being wrong', () => {
    const exchange: Problem = {
      f: (t, [x, z]) => {
        const flow = (1 + Math.sin(t)) * Math.sqrt(1 + x * x) - z;
        return [-flow, flow];
      },
      jacobian: () => [
        [-40, 7],
        [40, -7],
      ],
      timeSlope: () => [3, -3],
    };
    const [x, z] = integrate(method, exchange, [5, 1], 10, 1000);
    expect(Math.abs(x - 5)).toBeGreaterThan(0.1);
    expect(Math.abs(x + z - 6)).toBeLessThan(1e-12);
  });
});

describe('ros34pw2', () => {
  it("is stiffly accurate: y' = lambda (y - g(t)) lands on g(t + h) as lambda h tends to minus infinity", () => {
    const lambda = -1e9;
    const g = (t: number) => Math.exp(-t) + t * t;
    const problem: Problem = {
      f: (t, [y]) => [lambda * (y - g(t))],
      jacobian: () => [[lambda]],
      timeSlope: (t) => [lambda * (Math.exp(-t) - 2 * t)],
    };
    const { y } = step(ros34pw2, problem, 1, [g(1)], 0.2);
    expect(Math.abs(y[0] - g(1.2))).toBeLessThan(1e-7);
  });
});

function linear(z: number): Problem {
  return { f: (_, [y]) => [z * y], jacobian: () => [[z]], timeSlope: () => [0] };
}
