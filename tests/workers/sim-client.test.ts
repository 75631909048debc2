import { describe, expect, it } from 'vitest';
import type { OperatingPoint } from '../../src/sim/index.ts';
import type { PointReply } from '../../src/workers/api.ts';
import { poolSize, SimClient } from '../../src/workers/sim-client.ts';
import type { SweepProgress } from '../../src/workers/sim-client.ts';
import { engineNamed, everyTurn, fakeWorkers, startOf } from './fake-worker.ts';

const lovage = engineNamed('lovage');
const at = (speed: number): OperatingPoint => ({ speed, throttle: 1 });
const speeds = (count: number): OperatingPoint[] =>
  Array.from({ length: count }, (_, index) => at(100 * (index + 1)));
const still = (): number => 0;

function solvePoint(
  client: SimClient,
  speed: number,
  onTrouble?: (reason: string) => void,
): Promise<PointReply> {
  return new Promise((resolve) => {
    client.point(lovage, at(speed), null, { onReply: resolve, ...(onTrouble && { onTrouble }) });
  });
}

interface Swept {
  readonly order: number[];
  readonly speeds: Map<number, number>;
  readonly progress: SweepProgress[];
  readonly trouble: string[];
}

function sweep(client: SimClient, count: number): Promise<Swept> {
  const swept: Swept = { order: [], speeds: new Map(), progress: [], trouble: [] };
  return new Promise((resolve) => {
    client.sweep(lovage, speeds(count), {
      onPoint: (index, reply) => {
        swept.order.push(index);
        swept.speeds.set(index, reply.status === 'solved' ? reply.result.speed : Number.NaN);
      },
      onProgress: (progress) => swept.progress.push(progress),
      onEnd: () => resolve(swept),
      onTrouble: (reason) => swept.trouble.push(reason),
    });
  });
}

describe('poolSize', () => {
  it('leaves one core to the page and keeps at least 1 worker', () => {
    expect([1, 2, 8].map(poolSize)).toEqual([1, 1, 7]);
  });
});

describe('SimClient.sweep', () => {
  it('solves all 9 points on 3 workers, each at its own place', async () => {
    const workers = fakeWorkers(2);
    const swept = await sweep(new SimClient(workers.spawn, 3, still), 9);
    expect([...swept.speeds].sort((a, b) => a[0] - b[0]).map(([, speed]) => speed)).toEqual(
      speeds(9).map((point) => point.speed),
    );
  });

  it('takes both ends first on one worker, then the middle', async () => {
    const swept = await sweep(new SimClient(fakeWorkers(1).spawn, 1, still), 5);
    expect(swept.order).toEqual([0, 4, 2, 1, 3]);
  });

  it('estimates the time left from the pace so far: at 2 s a point, 4 s after 1 of 3', async () => {
    let clock = 100;
    const client = new SimClient(fakeWorkers(1, () => void (clock += 2)).spawn, 1, () => clock);
    const swept = await sweep(client, 3);
    expect(swept.progress.map((progress) => progress.timeLeft)).toEqual([null, 4, 2, 0]);
  });

  it('reports nothing more once it is stopped', async () => {
    const seen: number[] = [];
    const client = new SimClient(fakeWorkers(3).spawn, 1, still);
    await new Promise<void>((resolve) => {
      const running = client.sweep(lovage, speeds(6), {
        onPoint: (index) => {
          seen.push(index);
          running.stop();
          resolve();
        },
        onProgress: () => undefined,
        onEnd: () => seen.push(-1),
      });
    });
    await solvePoint(client, 500);
    expect(seen).toEqual([0]);
  });

  it('completes when a worker crashes under it, on a new worker, and says so', async () => {
    const workers = fakeWorkers(20);
    const client = new SimClient(workers.spawn, 2, still);
    const running = sweep(client, 6);
    await everyTurn.breathe();
    await everyTurn.breathe();
    workers.crash(0, 'out of memory');
    const swept = await running;
    expect(swept.speeds.size).toBe(6);
    expect([...swept.speeds.values()].every(Number.isFinite)).toBe(true);
    expect(swept.trouble).toEqual(['out of memory']);
    expect(workers.terminated).toEqual([0]);
  });

  it('completes when a worker falls silent: after 10 ticks without a word it is replaced, after 9 it is not', async () => {
    const workers = fakeWorkers(5);
    const client = new SimClient(workers.spawn, 1, still);
    const running = sweep(client, 3);
    await everyTurn.breathe();
    workers.silence(0);
    for (let tick = 0; tick < 9; tick++) client.tick();
    expect(workers.terminated).toEqual([]);
    client.tick();
    expect(workers.terminated).toEqual([0]);
    const swept = await running;
    expect([...swept.speeds.values()].every(Number.isFinite)).toBe(true);
    expect(swept.trouble).toEqual(['A worker gave no sign of life for 10 s.']);
  });

  it('keeps a worker that reports between ticks, and one without work, however many pass', async () => {
    const workers = fakeWorkers(40);
    const client = new SimClient(workers.spawn, 1, still);
    const reply = solvePoint(client, 1);
    for (let tick = 0; tick < 30; tick++) {
      await everyTurn.breathe();
      client.tick();
    }
    await reply;
    for (let tick = 0; tick < 30; tick++) client.tick();
    expect(workers.terminated).toEqual([]);
  });

  it('starts every point from the same neighbour, so that 1 and 4 workers give the same figures', async () => {
    const startsWith = async (count: number) => {
      const workers = fakeWorkers(2);
      await sweep(new SimClient(workers.spawn, count, still), 9);
      return new Map(
        workers.handed.map(({ operating, start }) => [operating.speed, start?.state[0] ?? null]),
      );
    };
    const alone = await startsWith(1);
    expect(await startsWith(4)).toEqual(alone);
    expect([...alone.values()].filter((start) => start === null).length).toBeLessThan(9);
  });
});

describe('SimClient.point', () => {
  it('goes ahead of a sweep that keeps the only worker busy, and the sweep still completes', async () => {
    const workers = fakeWorkers(10);
    const client = new SimClient(workers.spawn, 1, still);
    const finished: string[] = [];
    const running = sweep(client, 4).then((swept) => {
      finished.push('sweep');
      return swept;
    });
    await everyTurn.breathe();
    const reply = await solvePoint(client, 4321);
    finished.push('point');
    const swept = await running;
    expect(reply).toMatchObject({ status: 'solved', result: { speed: 4321 } });
    expect(finished).toEqual(['point', 'sweep']);
    expect(swept.speeds.size).toBe(4);
    expect(workers.handed.map((request) => request.operating.speed)[1]).toBe(4321);
  });

  it('passes preliminary figures on ahead of the reply, with the state to go on from', async () => {
    const client = new SimClient(fakeWorkers(4).spawn, 1, still);
    const seen: unknown[] = [];
    await new Promise<void>((resolve) => {
      client.point(lovage, at(500), startOf(400), {
        onPreview: (preview, near) => seen.push([preview, near]),
        onReply: (reply) => {
          seen.push(reply);
          resolve();
        },
      });
    });
    expect(seen).toMatchObject([
      [{ speed: 500, cycles: 400, preliminary: true }, startOf(500.5)],
      { status: 'solved', result: { speed: 500, cycles: 400 }, next: startOf(500) },
    ]);
  });

  it('passes no reply on once it is stopped, and frees its worker between turns', async () => {
    const workers = fakeWorkers(1000);
    const client = new SimClient(workers.spawn, 1, still);
    const replies: PointReply[] = [];
    const first = client.point(lovage, at(1), null, { onReply: (reply) => replies.push(reply) });
    await everyTurn.breathe();
    first.stop();
    expect(await solvePoint(client, 2)).toMatchObject({ status: 'solved' });
    expect(replies).toEqual([]);
  });

  it('tries a request that breaks its worker once more, then reports it broken', async () => {
    const workers = fakeWorkers(1, () => {
      throw new RangeError('Invalid typed array length');
    });
    const trouble: string[] = [];
    const client = new SimClient(workers.spawn, 1, still);
    const reply = await solvePoint(client, 1, (reason) => trouble.push(reason));
    expect(reply).toMatchObject({ status: 'broken', reason: 'Invalid typed array length' });
    expect(trouble).toEqual(['Invalid typed array length']);
    expect(workers.handed.length).toBe(2);
    expect(workers.terminated).toEqual([0, 1]);
  });

  it('gives equal engines one number and another engine another', async () => {
    const workers = fakeWorkers(1);
    const client = new SimClient(workers.spawn, 1, still);
    await solvePoint(client, 1);
    await solvePoint(client, 2);
    await new Promise<PointReply>((resolve) => {
      client.point(engineNamed('dill'), at(3), null, { onReply: resolve });
    });
    const ids = workers.handed.map((request) => request.engineId);
    expect(ids[0]).toBe(ids[1]);
    expect(ids[2]).not.toBe(ids[0]);
  });
});
