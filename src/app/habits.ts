import { setDefiner } from '../charts/definer.ts';
import { setProvenance } from '../charts/provenance.ts';
import { AskedTerm } from './definitions/asked-term.svelte.ts';
import { pinnedText } from './pin/pin-words.ts';
import { settingText } from './setting-text.ts';
import { setShownUnits } from './units/units-context.ts';
import type { Workbench } from './workbench.svelte.ts';

/**
 * What every chart, figure and field below this component shares: units, whose figures a saved file holds, and what a
 * figure is. The term that was asked for last is handed back, to be shown once for all.
 */
export function shareHabits(workbench: Workbench): AskedTerm {
  const asked = new AskedTerm();
  setDefiner((term, opener) => void asked.ask(term, opener));
  setShownUnits(() => workbench.units);
  setProvenance(() => {
    const { pin, designName, speed_rpm, throttle } = workbench;
    const present = `${designName}, ${settingText(speed_rpm, throttle)}`;
    return pin.kept ? [present, `Pinned, dotted: ${pinnedText(pin.kept)}`] : [present];
  });
  return asked;
}
