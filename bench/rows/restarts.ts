import { cc } from '../../src/sim/units.ts';
import type { Change } from '../core/core.ts';
import type { State } from '../core/cores.ts';
import { figuresOf, largestDifference } from '../figures.ts';
import { measure, median } from '../measure.ts';
import type { Measured } from '../measure.ts';
import { referenceFigures } from '../reference.ts';
import { NOTHING, ms, timed } from '../row.ts';
import type { Row, Rows } from '../row.ts';
import { at, solved } from '../solved.ts';

const PAIRS = 11;
const PRESET = 'lovage-7';

interface Neighbour {
  readonly input: string;
  readonly speed_rpm?: number;
  readonly throttle?: number;
  readonly changes?: readonly Change[];
}

/** Each 2 % away from the preset at 6000 rpm. */
function neighbours({ core }: State, text: string): readonly Neighbour[] {
  const { blower, plenum, windows, fuel } = core.designOf(text);
  const { displacement } = core.modelOf(text).engine.blower;
  const change = (path: string, value: number): { changes: readonly Change[] } => ({
    changes: [{ path, text: String(1.02 * value) }],
  });
  const exhaust = windows.exhaust[0];
  return [
    { input: 'speed', speed_rpm: 6120 },
    { input: 'throttle', throttle: 0.98 },
    {
      input: 'blower displacement',
      ...change('blower.displacement_cc', displacement / cc),
    },
    { input: 'exhaust window opens', ...change('windows.exhaust[0].opens_degATDC', exhaust.opens_degATDC!) },
    { input: 'plenum volume', ...change('plenum.volume_cc', plenum.volume_cc) },
    { input: 'tip gap', ...change('blower.tipGap_mm', blower.tipGap_mm) },
    { input: 'mixture', ...change('fuel.lambda', fuel.lambda) },
  ];
}

/** A point that starts from a stated neighbour, as behind a moving control, for several inputs. */
export const restarts: Rows = async function* ({ present, baseline, kept }) {
  const text = kept[PRESET];
  const rows: { row: Row; measured: Measured }[] = [];
  for (const { input, speed_rpm = 6000, throttle = 1, changes = [] } of neighbours(present, text)) {
    const point = at(speed_rpm, throttle);
    const restart = (state: State) => {
      const start = solved(state, state.core.modelOf(text), at(6000)).next;
      const model = state.core.modelOf(text, changes);
      return { model, run: () => solved(state, model, point, { start }) };
    };
    const ours = restart(present);
    const { result, next } = ours.run();
    const measured = await measure(ours.run, restart(baseline).run, PAIRS);
    const row: Row = {
      work: `  restarted, ${input} by 2 %`,
      aim: '16 ms',
      ...timed(measured),
      error: largestDifference(figuresOf(result), referenceFigures(present, ours.model, point)),
      steps: next.mesh.length - 1,
      cycles: result.cycles,
    };
    rows.push({ row, measured });
    yield row;
  }
  const byTime = [...rows].sort((a, b) => a.measured.median - b.measured.median);
  const over = (work: string, median_s: number): Row => ({
    ...NOTHING,
    work,
    aim: '16 ms',
    median: ms(median_s),
    error: Math.max(...rows.map(({ row }) => row.error!)),
  });
  const worst = byTime[byTime.length - 1];
  yield {
    ...over(
      'Lovage 7, 6000 rpm, restarted, median input',
      median(byTime.map(({ measured }) => measured.median)),
    ),
    ratio: median(rows.map(({ measured }) => measured.ratio!)),
  };
  yield {
    ...over('Lovage 7, 6000 rpm, restarted, worst input', worst.measured.median),
    ratio: worst.measured.ratio,
  };
};
