import { describe, expect, it } from 'vitest';
import { solveToEnd } from '../../../src/sim/cycle/solve.ts';
import { burnZones } from '../../../src/sim/results/burn-zones.ts';
import { at, changed, modelOf, presetEngine, solved } from '../../helpers/engines.ts';

const zonesWith = (products: 'frozen' | 'equilibrium') => {
  const model = modelOf(changed(presetEngine('dill-3'), { combustion: { products } }));
  const result = solved(solveToEnd(model, at(5000)).result);
  return { model, result, zones: burnZones(model, result, 1)! };
};
const known = (column: Float64Array) => [...column].filter(Number.isFinite);

describe('burnZones', () => {
  const frozen = zonesWith('frozen');
  const dissociating = zonesWith('equilibrium');

  it('holds the mean between unburned and burned gas wherever there are both', () => {
    const { unburned, burned, mean } = frozen.zones;
    const both = [...mean.keys()].filter((k) => unburned[k]! < mean[k]! && burned[k]! > 0);
    expect(both.length).toBeGreaterThan(8);
    for (const k of mean.keys())
      if (Number.isFinite(unburned[k]) && Number.isFinite(burned[k])) {
        expect(unburned[k]!).toBeLessThan(mean[k]!);
        expect(burned[k]!).toBeGreaterThan(mean[k]!);
      }
  });

  it('squeezes unburned gas to where the knock integral has its end gas, within 1 %', () => {
    const { zones, result } = frozen;
    const endGas = result.cylinders[1]!.knock!.endGasTemperature;
    expect(Math.max(...known(zones.unburned)) / endGas).toBeCloseTo(1, 1.7);
  });

  it('comes to within 1 % of the peak pressure of the cycle’s one zone', () => {
    for (const { zones } of [frozen, dissociating]) expect(Math.abs(zones.peakRatio - 1)).toBeLessThan(0.01);
  });

  it('finds burned gas cooler where it dissociates', () => {
    const hottest = ({ zones }: typeof frozen) => Math.max(...known(zones.burned));
    expect(hottest(dissociating)).toBeLessThan(hottest(frozen) - 20);
    expect(hottest(frozen)).toBeLessThan(3000);
  });

  it('burns the mixture that the point ran on, whatever the design would run on elsewhere', () => {
    const engine = presetEngine('caraway-1');
    const charge = { ...engine.charge, lambda: 1.1 };
    const model = modelOf({ ...engine, charge });
    const result = solved(solveToEnd(model, at(5000)).result);
    const rich = modelOf({ ...engine, charge: { ...charge, lambda: 0.7 } });
    expect(burnZones(rich, result, 0)).toEqual(burnZones(model, result, 0));
  });

  it('is none where nothing burns, or where a design that has changed has no such cylinder', () => {
    const model = modelOf(changed(presetEngine('caraway-1'), { combustion: { enabled: false } }));
    expect(burnZones(model, solved(solveToEnd(model, at(3000)).result), 0)).toBeNull();
    expect(burnZones(frozen.model, frozen.result, 3)).toBeNull();
  });
});
