import type { EnergyBalance } from '../../../src/sim/results/point-result.ts';
import { PRESET_NAMES } from '../../helpers/engines.ts';
import { presetPoint } from '../../helpers/preset-points.ts';
import type { Comparison, Subject } from './comparison.ts';

const spent = ({
  brake,
  friction,
  blower,
  cylinderWalls,
  otherWalls,
  exhaustSensible,
  unburned,
}: EnergyBalance): number =>
  brake + friction + blower + cylinderWalls + otherWalls + exhaustSensible + unburned;

const closes = (walls: string, solvesWalls: boolean): Comparison => ({
  quantity: `fuel in over brake + friction + blower + walls + exhaust + unburned, ${walls}: ${PRESET_NAMES.length} presets, each at its own speed`,
  origin: 'closed form',
  source:
    'first law over a period that repeats; every term is summed by itself, none is what the others leave',
  unit: '',
  values: PRESET_NAMES.map((name) => {
    const { balance } = presetPoint(name, solvesWalls).engine;
    return [1, balance.fuel / spent(balance)];
  }),
  within: { amount: 1e-6 },
  because: 'what a volume still gains in a period that repeats to 1e-10 a period, round-off',
});

const wallsLeadAway: Comparison = {
  quantity:
    'heat that air and crankcase take from the walls over heat that the gas gives them, worked out together',
  origin: 'closed form',
  source: 'first law over the walls of a cylinder, all cylinders of the presets',
  unit: '',
  values: PRESET_NAMES.flatMap((name) =>
    presetPoint(name, true).cylinders.map(({ walls, wallHeat }): readonly [number, number] => {
      if (!walls) return [1, NaN];
      const { headToAir, barrelToAir, crownToCase, bodyToCase } = walls;
      const { crown, head, liner } = wallHeat;
      return [1, (headToAir + barrelToAir + crownToCase + bodyToCase) / (crown + head + liner)];
    }),
  ),
  within: { amount: 1e-6 },
  because: 'round-off, and the last change of the wall temperatures',
};

export const energy = (): Subject => ({
  title: 'Energy of the presets',
  note: 'Whether the energy is right, term by term, is another matter: see the bands below. Cranking, middle and top of every range are held to the same in `tests/validation/presets.test.ts`.',
  comparisons: [
    closes('wall temperatures given', false),
    closes('wall temperatures worked out', true),
    wallsLeadAway,
  ],
  unproven: [
    'A balance that closes says that nothing is lost or counted twice, not that heat and work are divided as in a real engine.',
  ],
});
