import type { Axis, Cursor } from '../../charts/chart-types.ts';
import { rpm } from '../../sim/units.ts';
import type { Workbench } from '../workbench.svelte.ts';

const step_rpm = 50;

const range_rpm = ({ bench }: Workbench): [number, number] => {
  const { wanted } = bench.engine;
  return [Math.round(wanted.crankingSpeed / rpm), Math.round(wanted.maxSpeed / rpm)];
};

/** The speed that is set as a chart's cursor. */
export function speedCursor(workbench: Workbench): Cursor {
  const [least, most] = range_rpm(workbench);
  return {
    value: workbench.speed_rpm,
    name: 'crank speed',
    min: least,
    max: most,
    step: step_rpm,
    format: (value) => `${Math.round(value)} rpm`,
    onmove: (value) =>
      workbench.setSpeed(Math.min(most, Math.max(least, Math.round(value / step_rpm) * step_rpm))),
  };
}

export const speedAxis = (workbench: Workbench): Axis => ({
  quantity: 'crank speed',
  unit: 'rpm',
  domain: [0, range_rpm(workbench)[1]],
});
