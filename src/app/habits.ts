import { setProvenance } from '../charts/provenance.ts';
import { pinnedText } from './pin/pin-words.ts';
import { settingText } from './setting-text.ts';
import { setShownUnits } from './units/units-context.ts';
import type { Workbench } from './workbench.svelte.ts';

/** What every chart, figure and field below this component shares: units, and whose figures a saved file holds. */
export function shareHabits(workbench: Workbench): void {
  setShownUnits(() => workbench.units);
  setProvenance(() => {
    const { pin, designName, speed_rpm, throttle } = workbench;
    const present = `${designName}, ${settingText(speed_rpm, throttle)}`;
    return pin.kept ? [present, `Pinned, dotted: ${pinnedText(pin.kept)}`] : [present];
  });
}
