/**
 * All that a bench needs of one state of the project, to be bundled into one file: so that an earlier state can be kept
 * and timed beside the present one. It may only name what that earlier state has, too.
 */
import * as Comlink from 'comlink';
import { readDesign } from '../../src/design/read-design.ts';
import type { Design } from '../../src/design/schema/design.ts';
import { setValues } from '../../src/design/set-value.ts';
import { toEngine } from '../../src/design/to-engine.ts';
import { buildModel, solve, solveToEnd } from '../../src/sim/index.ts';
import type { Model } from '../../src/sim/index.ts';
import type { Outcome } from '../../src/sim/outcome.ts';
import type { SimService } from '../../src/workers/api.ts';
import { buffersOf } from '../../src/workers/buffers-of.ts';
import { createSimService } from '../../src/workers/sim-service.ts';

export { SimClient } from '../../src/workers/sim-client.ts';
export { solveToEnd, toEngine };

declare const COMMIT: string;
/** Short name of the commit that this was bundled from; "+" behind it where files differed from it. */
export const commit = COMMIT;

/** What is there must be right: a bench without its engine is a bug. */
function sure<T>(outcome: Outcome<T>): T {
  if (outcome.ok) return outcome.value;
  throw new Error(outcome.faults.map(({ path, message }) => `${path}: ${message}`).join('\n'));
}

export type Change = Parameters<typeof setValues>[1][number];

/** The text of a design file, with changes made to it. */
export const designOf = (text: string, changes: readonly Change[] = []): Design =>
  sure(setValues(sure(readDesign(text)), changes));

export const modelOf = (text: string, changes: readonly Change[] = []): Model =>
  sure(buildModel(toEngine(designOf(text, changes))));

/** Makes this thread a worker as the app's are: the same service at the same pace, answers sent by transfer. */
export function serve(port: Comlink.Endpoint): void {
  const { port1, port2 } = new MessageChannel();
  let resume: (() => void) | null = null;
  port1.onmessage = () => resume?.();
  const breathe = (): Promise<void> =>
    new Promise((resolve) => {
      resume = resolve;
      port2.postMessage(null);
    });
  const service = createSimService(
    { build: buildModel, solve },
    { now: () => performance.now(), breathe, longestStretch_ms: 8 },
  );
  const sent: SimService = {
    ...service,
    solve: async (request) => {
      const reply = await service.solve(request);
      return Comlink.transfer(reply, buffersOf(reply));
    },
  };
  Comlink.expose(sent, port);
}
