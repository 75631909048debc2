import { Session } from 'node:inspector/promises';
import { pathToFileURL } from 'node:url';
import type { HeapProfiler } from 'node:inspector';
import { ROOT } from '../core/at-commit.ts';
import { bundle } from '../core/bundle.ts';
import { CACHE } from '../core/cores.ts';
import type { Core } from '../core/cores.ts';
import { NOTHING } from '../row.ts';
import type { Row, Rows } from '../row.ts';
import { at } from '../solved.ts';

/** Bytes between two samples, on average. */
const INTERVAL = 1024;
const POINTS = 8;
const SPEEDS_RPM = [6000, 250];
/**
 * The loops over the steps of a period, by their names in the source. What the compiler took into them counts as theirs.
 */
const LOOPS = ['follow', 'adapt'];

interface Share {
  bytes: number;
  /** Bytes by the function that asked for them. */
  readonly by: Map<string, number>;
}

/**
 * What is allocated while a point is solved, collected or not: in the loop of steps and whatever it calls, for each step of the
 * mesh (halved steps count as one), and elsewhere.
 */
export const heap: Rows = async function* ({ kept }) {
  const path = await bundle(ROOT, CACHE, 'readable', 'readable', true);
  const core = (await import(pathToFileURL(path).href)) as Core;
  const model = core.modelOf(kept['lovage-7']);
  for (const speed_rpm of SPEEDS_RPM) {
    const solve = () => core.solveToEnd(model, at(speed_rpm));
    for (let i = 0; i < POINTS; i++) solve();
    const { next, result } = solve();
    const steps = (next!.mesh.length - 1) * result.cycles * POINTS;
    const profile = await sampled(() => {
      for (let i = 0; i < POINTS; i++) solve();
    });
    const shares = sharesOf(profile.head);
    const row = (work: string, { bytes, by }: Share, per: number, unit: string, aim: string): Row => {
      const most = [...by].sort((a, b) => b[1] - a[1]).slice(0, 3);
      const names = most.map(([name, of]) => `${name} ${((100 * of) / bytes).toFixed(0)} %`).join(', ');
      return {
        ...NOTHING,
        work: `${speed_rpm} rpm, heap ${work}${names === '' ? '' : `: ${names}`}`,
        median: `${(bytes / per).toFixed(1)} ${unit}`,
        aim,
        steps,
      };
    };
    yield row('in stepping', shares.stepping, steps, 'B/step', '0 B/step');
    yield row('elsewhere', shares.elsewhere, 1000 * POINTS, 'kB/point', '');
  }
};

async function sampled(run: () => void): Promise<HeapProfiler.SamplingHeapProfile> {
  const session = new Session();
  session.connect();
  const flags = { includeObjectsCollectedByMajorGC: true, includeObjectsCollectedByMinorGC: true };
  await session.post('HeapProfiler.startSampling', { samplingInterval: INTERVAL, ...flags });
  run();
  const { profile } = await session.post('HeapProfiler.stopSampling');
  session.disconnect();
  return profile;
}

function sharesOf(head: HeapProfiler.SamplingHeapProfileNode): Record<'stepping' | 'elsewhere', Share> {
  const fresh = (): Share => ({ bytes: 0, by: new Map() });
  const shares = { stepping: fresh(), elsewhere: fresh() };
  const walk = (node: HeapProfiler.SamplingHeapProfileNode, within: keyof typeof shares): void => {
    const functionName = node.callFrame.functionName || 'anonymous';
    const here = LOOPS.includes(functionName) ? 'stepping' : within;
    const share = shares[here];
    share.bytes += node.selfSize;
    if (node.selfSize > 0) share.by.set(functionName, (share.by.get(functionName) ?? 0) + node.selfSize);
    for (const child of node.children) walk(child, here);
  };
  walk(head, 'elsewhere');
  return shares;
}
