import { describe, expect, it } from 'vitest';
import type { StudyReply } from '../../src/workers/api.ts';
import { SimClient } from '../../src/workers/sim-client.ts';
import type { StudyEvents } from '../../src/workers/sim-client.ts';
import type { StudyQuestion } from '../../src/workers/study-questions.ts';
import { engineNamed, fakeWorkers } from './fake-worker.ts';

const lovage = engineNamed('lovage');
const at = (speed: number): StudyQuestion => ({ kind: 'gains', speeds: [speed], throttle: 1 });
const client = (workers: ReturnType<typeof fakeWorkers>, size = 1): SimClient =>
  new SimClient(workers.spawn, size, () => 0);

const study = (from: SimClient, speed: number, events: Partial<StudyEvents> = {}): Promise<StudyReply> =>
  new Promise((resolve) => {
    from.study(lovage, at(speed), { onReply: resolve, ...events });
  });

describe('SimClient.study', () => {
  it('answers, and says what it is at after each of 3 steps', async () => {
    const steps: string[] = [];
    const reply = await study(client(fakeWorkers(3)), 500, { onStep: (doing) => steps.push(doing) });
    expect(reply).toMatchObject({ status: 'answered', answer: [{ speed: 500, gain: null }] });
    expect(steps).toEqual(['step 1', 'step 2', 'step 3']);
  });

  it('gives way to a point that is asked for meanwhile, and answers afterwards from its beginning', async () => {
    const workers = fakeWorkers(4);
    const from = client(workers);
    const order: string[] = [];
    const studied = study(from, 500, { onStep: (doing) => order.push(doing) }).then(() =>
      order.push('study'),
    );
    await new Promise((resolve) => setImmediate(resolve));
    await new Promise<void>((resolve) => {
      from.point(lovage, { speed: 700, throttle: 1 }, null, {
        onReply: ({ status }) => {
          order.push(`point ${status}`);
          resolve();
        },
      });
    });
    await studied;
    const begins = order.flatMap((each, i) => (each === 'step 1' ? [i] : []));
    expect(begins.length).toBe(2);
    expect(order.indexOf('point solved')).toBeLessThan(begins[1]!);
    expect(order.at(-1)).toBe('study');
  });

  it('says nothing more once it is stopped, and lets the next one in', async () => {
    const from = client(fakeWorkers(3));
    const told: string[] = [];
    const running = from.study(lovage, at(500), {
      onStep: (doing) => told.push(doing),
      onReply: ({ status }) => told.push(status),
    });
    running.stop();
    expect(await study(from, 600)).toMatchObject({ status: 'answered', answer: [{ speed: 600 }] });
    expect(told).toEqual([]);
  });

  it('is tried once more when its worker crashes, and broken with the reason when that crashes, too', async () => {
    const once = fakeWorkers(2, () => {
      if (once.studied.length === 1) throw new Error('Out of memory.');
    });
    const trouble: string[] = [];
    expect(await study(client(once), 500, { onTrouble: (reason) => trouble.push(reason) })).toMatchObject({
      status: 'answered',
    });
    expect(trouble).toEqual(['Out of memory.']);
    const always = fakeWorkers(2, () => {
      throw new Error('Out of memory.');
    });
    expect(await study(client(always), 500)).toMatchObject({ status: 'broken', reason: 'Out of memory.' });
  });

  it('comes back refused, with the faults, for an engine that cannot be built and for a question without an answer', async () => {
    const from = client(fakeWorkers(2));
    const unbuildable = await new Promise<StudyReply>((resolve) => {
      from.study(engineNamed('unbuildable'), at(500), { onReply: resolve });
    });
    expect(unbuildable).toMatchObject({ status: 'refused', reason: 'The rod cannot go round.' });
    expect(await study(from, 0)).toMatchObject({ status: 'refused', reason: 'The crank stands.' });
  });
});
