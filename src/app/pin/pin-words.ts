import { presetDesign, presets } from '../presets.ts';
import { settingText } from '../setting-text.ts';
import { changesText, designChanges } from './design-changes.ts';
import type { Pinned } from './pin.svelte.ts';
import type { Bench } from '../presets.ts';

/** What is pinned: `Lovage 7 with bore 42 mm, 6000 rpm, throttle open`. */
export function pinnedText({ bench: { design }, speed_rpm, throttle }: Pinned): string {
  const origin = presets.find(({ name }) => name === design.name);
  const changes = origin ? designChanges(presetDesign(origin), design) : [];
  const what = changes.length > 0 ? ` with ${changesText(changes)}` : '';
  return `${design.name}${what}, ${settingText(speed_rpm, throttle)}`;
}

/** What is otherwise now: `bore 42 mm, 7000 rpm`; empty where nothing is. */
export function nowText(
  pinned: Pinned,
  now: { readonly bench: Bench; readonly speed_rpm: number; readonly throttle: number },
): string {
  const other = now.bench.design.name !== pinned.bench.design.name;
  const design = other
    ? now.bench.design.name
    : changesText(designChanges(pinned.bench.design, now.bench.design));
  const moved = now.speed_rpm !== pinned.speed_rpm || now.throttle !== pinned.throttle;
  return [design, moved ? settingText(now.speed_rpm, now.throttle) : '']
    .filter((part) => part !== '')
    .join(', ');
}
