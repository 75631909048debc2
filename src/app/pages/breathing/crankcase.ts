import { figure } from '../../../charts/format.ts';
import type { CrankcaseFigures } from '../../../sim/results/point-result.ts';
import { milligram, percent } from '../../../sim/units.ts';
import type { ShownUnits } from '../../units/shown-units.ts';
import type { KeyFigure } from '../key-figure.ts';

/** Of a crankcase that is a volume of the model: its pressure, and what comes and goes. */
export function crankcaseItems(node: CrankcaseFigures, units: ShownUnits): readonly KeyFigure[] {
  const flow = (value: number): string => `${figure(value / milligram)}\u00a0mg/s`;
  return [
    {
      label: 'pressure in the crankcase',
      text: units.text('pressure', node.meanPressure),
      beside: `${units.text('pressure', node.minPressure)} to ${units.text('pressure', node.maxPressure)}`,
    },
    {
      label: 'past the rings into it',
      text: flow(node.blowBy),
      beside: `out of the breather ${flow(node.breathed)}; ${figure(node.purity / percent)}\u00a0% unburned gas in it`,
    },
    {
      label: 'what the undersides take',
      text: units.text('power', node.pumpingPower),
      beside: `its volume swings by ${units.text('volume', node.volumeSwing)}`,
    },
  ];
}
