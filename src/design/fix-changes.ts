import type { Model } from '../sim/index.ts';
import type { Fix } from '../sim/study/match/fix.ts';
import { raiseWindows, scaleLength } from '../sim/study/match/knobs.ts';
import { cc, deg, mm, mm2 } from '../sim/units.ts';
import type { Design } from './schema/design.ts';

/** One value of a design and what is to be typed for it: see setValues. */
export interface Change {
  readonly path: string;
  readonly text: string;
}

/** Twelve figures: what solving gave, without the noise of the last bits. */
const text = (value: number): string => String(Number(value.toPrecision(12)));

/**
 * What must be typed into a design so that a fix holds in it.
 *
 * @param model - that of the design, from which the fix was found
 */
export function fixChanges(design: Design, model: Model, fix: Fix): readonly Change[] {
  const { blower } = design;
  const share = fix.to / fix.from;
  const scaled = (key: 'displacement_cc' | 'clearanceArea_mm2', value: number): Change[] =>
    blower[key] === undefined ? [] : [{ path: `blower.${key}`, text: text(value) }];
  switch (fix.vary) {
    case 'blower.driveRatio':
      return (fix.gears ?? []).flatMap(({ driverTeeth, drivenTeeth }, i) => {
        const now = blower.gears[i];
        return [
          ...(now?.driver === driverTeeth
            ? []
            : [{ path: `blower.gears[${i}].driver`, text: text(driverTeeth) }]),
          ...(now?.driven === drivenTeeth
            ? []
            : [{ path: `blower.gears[${i}].driven`, text: text(drivenTeeth) }]),
        ];
      });
    case 'blower.displacement': {
      const longer = scaleLength(model.engine, share).blower;
      return [
        { path: 'blower.rotorLength_mm', text: text(longer.rotors.length / mm) },
        ...scaled('displacement_cc', longer.displacement / cc),
        ...scaled('clearanceArea_mm2', longer.clearanceArea / mm2),
      ];
    }
    case 'blower.count':
      return [{ path: 'blower.count', text: text(fix.to) }];
    case 'blower.gaps':
      return [
        ...(['tipGap_mm', 'meshGap_mm', 'endGap_mm'] as const).map((key) => ({
          path: `blower.${key}`,
          text: text(blower[key] * share),
        })),
        ...scaled('clearanceArea_mm2', (model.engine.blower.clearanceArea * share) / mm2),
      ];
    case 'fuel.carburettor.bore':
      return [{ path: 'fuel.carburettor.bore_mm', text: text(fix.to / mm) }];
    case 'windows.transfer':
    case 'windows.exhaust': {
      const kind = fix.vary === 'windows.transfer' ? 'transfer' : 'exhaust';
      return raiseWindows(model, kind, fix.to).map(({ top }, i) =>
        top.kind === 'depth'
          ? { path: `windows.${kind}[${i}].top_mm`, text: text(top.depth / mm) }
          : { path: `windows.${kind}[${i}].opens_degATDC`, text: text(top.opensAfterTdc / deg) },
      );
    }
    case 'plenum.volume':
      return [{ path: 'plenum.volume_cc', text: text(fix.to / cc) }];
  }
}
