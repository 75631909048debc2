import type { Model } from '../../sim/index.ts';
import type { Backfire } from '../../sim/study/checks/fire/backfire.ts';
import { discDiameter } from '../../sim/study/checks/fire/vent-area.ts';
import type { Snap } from '../../sim/study/checks/snapped-throttle.ts';
import { bar, cc, gram, kJ, mbar, millisecond, mm, mm2, rpm } from '../../sim/units.ts';
import { CAUTION } from '../reports.ts';
import { table } from '../table.ts';

const fixed = (value: number, digits: number): string => value.toFixed(digits).replace('-', '−');

/** What stands in the tract, what it would reach if it burned, what relief would take, and a throttle snapped shut. */
export function backfireReport(
  design: string,
  { engine }: Model,
  speed: number,
  fire: Backfire,
  snap: Snap | null,
): string {
  const { ambient, plenum } = engine;
  const above = (pressure: number) => fixed((pressure - ambient.pressure) / bar, 2);
  const rows = fire.spaces.map(({ space, volume, mass, energy, closedPressure }) => [
    space,
    fixed(volume / cc, 0),
    fixed(mass / gram, 3),
    fixed(energy / kJ, 2),
    above(closedPressure),
  ]);
  const relieved = !fire.plenumBurns
    ? 'No fuel joins the air ahead of the plenum, so no mixture stands there but what is blown back.'
    : plenum.relief && fire.relievedPressure !== null
      ? `The relief valve (${fixed(plenum.relief.area / mm2, 0)} mm²) leaves about ${above(fire.relievedPressure)} bar, were the plenum burned in ${fixed(fire.burnTime / millisecond, 1)} ms.`
      : 'There is no relief valve.';
  const needed = !fire.plenumBurns
    ? ''
    : fire.reliefNeeded === null
      ? `What relief would hold it to ${above(fire.held)} bar lies outside the rule (0.1 to 2 bar over the plenum’s own pressure).`
      : `To hold it to ${above(fire.held)} bar takes some ${fixed(fire.reliefNeeded / mm2, 0)} mm², a disc of ${fixed(discDiameter(fire.reliefNeeded) / mm, 0)} mm that bursts early (EN 14994, made for larger vessels).`;
  return [
    `${design}, ${fixed(speed / rpm, 0)} rpm: ${fixed(fire.tractMass / gram, 2)} g of mixture (${fixed(fire.energy / kJ, 1)} kJ) stand between throttle and cylinders.`,
    'If it burned, each space shut off from the others:',
    '',
    table(['', 'cc', 'mixture g', 'kJ', 'bar above ambient'], rows),
    '',
    ...(fire.piledPressure === null
      ? []
      : [
          `A passage that the burning plenum packs before it burns itself could see ${above(fire.piledPressure)} bar.`,
        ]),
    relieved,
    ...(needed === '' ? [] : [needed]),
    ...(fire.spaces.some(({ space }) => space === 'crankcase')
      ? []
      : ['For the crankcase give its volume: --crankcase 600cc.']),
    ...(snap
      ? [
          '',
          `Throttle snapped shut at that speed: ${fixed(snap.boxDepression / mbar, 0)} mbar below ambient behind it, ${fixed(snap.plenumDepression / mbar, 0)} mbar in the plenum` +
            (snap.settledAfter === null ? ', still falling.' : `, after ${snap.settledAfter} turns.`),
        ]
      : []),
    '',
    'Bounds of burning, no heat lost and no dissociation; not a strength to design for. A flame that turns into a detonation goes',
    'far beyond. Flame arrester and relief belong on every plenum, aimed where nobody stands.',
    CAUTION,
    '',
  ].join('\n');
}
