import { difference } from '../../../charts/difference.ts';
import { figure } from '../../../charts/format.ts';
import type { SolvedPoint } from '../../../sim/index.ts';
import { rpm } from '../../../sim/units.ts';
import type { Bench } from '../../presets.ts';
import type { Measure, ShownUnits } from '../../units/shown-units.ts';
import type { KeyFigure } from '../key-figure.ts';
import { shareText, speedText } from '../words.ts';

/** A point and the design that it is of. */
interface Held {
  readonly bench: Pick<Bench, 'engine'>;
  readonly point: SolvedPoint;
}

/** What a figure of the pinned point is, beside the present one. */
type Against = (
  now: number,
  of: (point: SolvedPoint & { gauge: number }) => number,
  measure?: Measure,
) => string;

/** What the air comes to at a point: plenum, flow, blowers, and what leads round them. */
export function airFigures(
  { bench, point }: Held,
  kept: Held | null,
  units: ShownUnits,
): readonly KeyFigure[] {
  const { plenum, engine, blower, stages, relief, bypass } = point;
  const { ambient, blower: limits } = bench.engine;
  const gauge = plenum.meanPressure - ambient.pressure;
  const before = kept && {
    ...kept.point,
    gauge: kept.point.plenum.meanPressure - kept.bench.engine.ambient.pressure,
  };
  const against: Against = (now, of, measure) => {
    if (before === null) return '';
    const shown = (value: number) => (measure ? units.number(measure, value) : value);
    return difference(shown(now), shown(of(before)));
  };
  return [
    {
      label: 'plenum gauge',
      term: 'plenumGauge',
      text: units.text('pressure', gauge),
      beside: units.second('pressure', gauge),
      against: against(gauge, (each) => each.gauge, 'pressure'),
    },
    {
      label: 'air flow',
      term: 'airFlow',
      text: units.text('mass flow', engine.airFlow),
      beside: 'through the throttle',
      against: against(engine.airFlow, (each) => each.engine.airFlow, 'mass flow'),
    },
    blower.wheel
      ? {
          label: 'of best flow',
          term: 'wheel.flow',
          text: shareText(blower.wheel.flow),
          beside: `surges below ${shareText(blower.wheel.surge)}`,
          beyond: blower.wheel.flow < blower.wheel.surge,
        }
      : {
          label: 'slip',
          term: 'slipFraction',
          text: shareText(blower.slipFraction),
          beside: 'of what is displaced',
          against: against(100 * blower.slipFraction, (each) => 100 * each.blower.slipFraction),
        },
    ...(blower.builtIn
      ? [
          {
            label: 'compresses inside',
            term: 'builtIn.pressureRatio',
            text: `${figure(blower.builtIn.pressureRatio)} times`,
            beside: `${figure(blower.builtIn.neededRatio)} are needed`,
          },
        ]
      : []),
    ...stageFigures(stages, ambient.pressure, units),
    ...bypassFigures(bypass, bench.engine.plenum.bypass?.into === 'air', units, against),
    ...reliefFigures(relief, units),
    {
      label: 'blower takes',
      term: 'shaftPower',
      text: units.text('power', blower.shaftPower),
      beside: 'at the crank',
      against: against(blower.shaftPower, (each) => each.blower.shaftPower, 'power'),
    },
    {
      label: blower.wheel ? 'wheel' : 'rotors',
      term: 'rotorSpeed',
      text: speedText(blower.rotorSpeed),
      beside: `limit ${speedText(limits.maxSpeed)}`,
      beyond: blower.rotorSpeed > limits.maxSpeed,
      against: against(blower.rotorSpeed / rpm, (each) => each.blower.rotorSpeed / rpm),
    },
    {
      label: blower.wheel ? 'wheel tips' : 'rotor tips',
      term: 'tipSpeed',
      text: units.text('speed', blower.tipSpeed),
      beside: `limit ${units.text('speed', limits.maxTipSpeed)}`,
      beyond: blower.tipSpeed > limits.maxTipSpeed,
      against: against(blower.tipSpeed, (each) => each.blower.tipSpeed, 'speed'),
    },
  ];
}

function stageFigures(
  stages: SolvedPoint['stages'],
  ambient: number,
  units: ShownUnits,
): readonly KeyFigure[] {
  if (!stages) return [];
  const { first, second, interstage, beforeSecond, cooler } = stages;
  return [
    {
      label: 'between the stages',
      term: 'stages.interstage',
      text: units.text('pressure', interstage.meanPressure - ambient),
      beside: `gauge; second stage takes in ${units.text('temperature', beforeSecond.meanTemperature)}`,
    },
    {
      label: 'second stage takes',
      term: 'stages.second.shaftPower',
      text: units.text('power', second.shaftPower),
      beside: `${speedText(second.rotorSpeed)}, the first ${units.text('power', first.shaftPower)}`,
    },
    ...(cooler
      ? [
          {
            label: 'intercooler takes',
            term: 'stages.cooler.heat',
            text: units.text('power', cooler.heat),
            beside: `of heat, and loses ${units.text('pressure', cooler.pressureLoss)}`,
          },
        ]
      : []),
  ];
}

function bypassFigures(
  bypass: SolvedPoint['bypass'],
  intoAir: boolean,
  units: ShownUnits,
  against: Against,
): readonly KeyFigure[] {
  if (!bypass) return [];
  return [
    {
      label: 'through the bypass',
      term: 'bypass.massFlow',
      text: units.text('mass flow', bypass.massFlow),
      beside: `${shareText(bypass.share)} of what is delivered`,
      against: against(bypass.massFlow, (each) => each.bypass?.massFlow ?? 0, 'mass flow'),
    },
    {
      label: 'heat it carries',
      term: 'bypass.heat',
      text: units.text('power', bypass.heat),
      beside: intoAir ? 'lost to the air' : 'back into the inlet box',
      against: against(bypass.heat, (each) => each.bypass?.heat ?? 0, 'power'),
    },
  ];
}

/** Only where it opens. */
function reliefFigures(relief: SolvedPoint['relief'], units: ShownUnits): readonly KeyFigure[] {
  if (!relief || relief.greatestLift === 0) return [];
  return [
    {
      label: 'out of the relief valve',
      term: 'relief.massFlow',
      text: units.text('mass flow', relief.massFlow),
      beside: `it lifts up to ${shareText(relief.greatestLift)}`,
    },
  ];
}
