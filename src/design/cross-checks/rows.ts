import { cylinderName, readCylinderName, rowLetter } from '../cylinder-name.ts';
import { formatNumber } from '../format-quantity.ts';
import type { Design } from '../schema/design.ts';
import { fault } from './cross-fault.ts';
import type { CrossFault } from './cross-fault.ts';

export function* rows({ crank }: Design): Generator<CrossFault> {
  for (const [i, { cylinders, master, axes_deg }] of crank.rows.entries()) {
    const path = `crank.rows[${i}]`;
    const count = `${path}.cylinders`;
    if (master > cylinders) {
      const allowed = `allowed 1 to ${cylinders}, the cylinders of row ${rowLetter(i)}`;
      yield fault(`${path}.master`, `the master rod is in cylinder ${master}; ${allowed}`, count);
    }
    if (axes_deg && axes_deg.length !== cylinders) {
      const allowed = `row ${rowLetter(i)} has ${cylinders} cylinders and needs as many`;
      yield fault(`${path}.axes_deg`, `${axes_deg.length} axis angles are given; ${allowed}`, count);
    }
    if (axes_deg) {
      const turned = axes_deg.map((axis) => ((axis % 360) + 360) % 360);
      const twice = turned.findIndex((axis, j) => turned.indexOf(axis) < j);
      if (twice >= 0) {
        const first = turned.indexOf(turned[twice]!);
        yield fault(
          `${path}.axes_deg[${twice}]`,
          `cylinders ${first + 1} and ${twice + 1} have the same axis, ${formatNumber(axes_deg[twice]!)}°; each needs its own`,
          `${path}.axes_deg`,
        );
      }
    }
  }
}

export function* corrections({ crank }: Design): Generator<CrossFault> {
  const seen = new Map<string, number>();
  for (const [i, correction] of crank.corrections.entries()) {
    const path = `crank.corrections[${i}].cylinder`;
    const name = correction.cylinder;
    const { rowIndex, cylinderIndex } = readCylinderName(name)!;
    const row = crank.rows[rowIndex];
    if (!row || cylinderIndex >= row.cylinders) {
      const last = crank.rows.map(
        ({ cylinders }, r) => `${cylinderName(r, 0)} to ${cylinderName(r, cylinders - 1)}`,
      );
      yield fault(
        path,
        `there is no cylinder ${name}; allowed: ${last.join(', ')}`,
        'crank.rows',
        'crank.rows[',
      );
    } else if (row.master === cylinderIndex + 1) {
      for (const key of ['knuckle_deg', 'knuckleRadius_mm', 'rod_mm'] as const) {
        if (correction[key] === undefined) continue;
        yield fault(
          `crank.corrections[${i}].${key}`,
          `${name} carries the master rod, which has no knuckle pin; leave ${key} out`,
          path,
          `crank.rows[${rowIndex}].master`,
        );
      }
    }
    const first = seen.get(name);
    if (first !== undefined) {
      const where = `crank.corrections[${first}]`;
      yield fault(
        path,
        `${name} is corrected twice, first in ${where}; put it all in one`,
        `${where}.cylinder`,
      );
    } else {
      seen.set(name, i);
    }
  }
}

export function* collectors({ crank, exhaust }: Design): Generator<CrossFault> {
  const count = exhaust.collectors.length;
  const allowed = `allowed 1 to ${count}, as many as exhaust.collectors has`;
  for (const [i, { collector }] of crank.rows.entries()) {
    if (collector > count) {
      yield fault(
        `crank.rows[${i}].collector`,
        `collector is ${collector}; ${allowed}`,
        'exhaust.collectors',
      );
    }
  }
  for (const [i, { collector }] of crank.corrections.entries()) {
    if (collector !== undefined && collector > count) {
      yield fault(
        `crank.corrections[${i}].collector`,
        `collector is ${collector}; ${allowed}`,
        'exhaust.collectors',
      );
    }
  }
}
