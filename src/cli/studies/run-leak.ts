import { UNIT_OF_SUFFIX } from '../../design/unit-table.ts';
import { failure } from '../../sim/outcome.ts';
import { clearanceFromTest } from '../../sim/study/checks/leak-check.ts';
import { bar, celsiusFromKelvin, mm2, rpm } from '../../sim/units.ts';
import { readSpeeds } from '../arguments.ts';
import { BAD_INPUT, SOLVED, tell } from '../streams.ts';
import type { Streams } from '../streams.ts';
import { readTyped } from './read-typed.ts';
import { readStudyArguments } from './study-arguments.ts';

/** `leak FILE --speed 1000 --holds 0.1bar [--gas 20C] [--json]`: the clearance that a blower turned against a closed outlet shows. */
export function runLeak(argv: readonly string[], streams: Streams): number {
  const request = readStudyArguments(argv, {
    speed: { type: 'string' },
    holds: { type: 'string' },
    gas: { type: 'string' },
    json: { type: 'boolean' },
  });
  if (!request.ok) return tell(request.faults, streams);
  const { design, model, values } = request.value;
  const { blower, ambient } = model.engine;
  if (blower.impeller) {
    const message = 'is centrifugal; such a blower has no clearance to test';
    return tell([{ path: 'blower.kind', message }], streams);
  }
  const text = (option: string) => values[option] as string | undefined;
  const speed = readSpeeds('one', text('speed'));
  const held =
    text('holds') === undefined
      ? failure([{ path: '--holds', message: 'missing; give a reading, as 0.1bar' }])
      : readTyped('--holds', text('holds'), UNIT_OF_SUFFIX.barGauge, NaN);
  const gas = readTyped('--gas', text('gas'), UNIT_OF_SUFFIX.C, ambient.temperature);
  const faults = [speed, held, gas].flatMap((each) => (each.ok ? [] : each.faults));
  if (!speed.ok || !held.ok || !gas.ok) return tell(faults, streams);
  if (!(held.value > 0 && held.value <= 3 * bar))
    return tell([{ path: '--holds', message: `is ${text('holds')}; allowed above 0, up to 3 bar` }], streams);
  const found = clearanceFromTest({
    displacement: blower.displacement,
    rotorSpeed: speed.value[0]!,
    heldPressure: ambient.pressure + held.value,
    inletPressure: ambient.pressure,
    inletTemperature: ambient.temperature,
    gasTemperature: gas.value,
  });
  if (!found.ok) {
    tell(
      found.faults.map(({ message }) => ({ path: '--gas', message })),
      streams,
    );
    return BAD_INPUT;
  }
  const area = found.value / blower.clearanceDischarge;
  const setting = `blower.clearanceArea_mm2=${Number((area / mm2).toPrecision(6))}`;
  const share = area / blower.clearanceArea - 1;
  streams.out(
    values['json']
      ? `${JSON.stringify(
          {
            design: design.name,
            effectiveArea_m2: found.value,
            clearanceArea_m2: area,
            clearanceDischarge: blower.clearanceDischarge,
            designClearanceArea_m2: blower.clearanceArea,
            set: setting,
          },
          null,
          2,
        )}\n`
      : [
          `${design.name}: one blower at ${Math.round(speed.value[0]! / rpm)} rpm of its rotors holds ${(held.value / bar).toFixed(4)} bar against a closed outlet,`,
          `with ${celsiusFromKelvin(gas.value).toFixed(0)} °C in it: clearances of ${(area / mm2).toFixed(1)} mm² (coefficient ${blower.clearanceDischarge}).`,
          `The design has ${(blower.clearanceArea / mm2).toFixed(1)} mm²: this one leaks ${Math.abs(100 * share).toFixed(0)} % ${share > 0 ? 'more' : 'less'}.`,
          `  --set ${setting}`,
          '',
          'A short test: gas that goes round warms, and reads too tight. Nothing else may leak. Keep hands from turning rotors.',
          '',
        ].join('\n'),
  );
  return SOLVED;
}
