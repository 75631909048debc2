import { describe, expect, it } from 'vitest';
import type { PointRequest, TurnReport } from '../../src/workers/api.ts';
import { createSimService } from '../../src/workers/sim-service.ts';
import { countingSolver, engineNamed, everyTurn, startOf } from './fake-worker.ts';

const request = (runId: number, engineId = 1, name = 'lovage'): PointRequest => ({
  runId,
  engine: engineNamed(name),
  engineId,
  operating: { speed: 100 * runId, throttle: 1 },
  start: null,
  preview: false,
});

describe('createSimService', () => {
  it('solves a request and reports each of its 3 turns', async () => {
    const service = createSimService(countingSolver(3), everyTurn);
    const reports: TurnReport[] = [];
    service.watch((report) => reports.push(report));
    expect(await service.solve(request(7))).toMatchObject({
      runId: 7,
      status: 'solved',
      result: { speed: 700 },
    });
    expect(reports.map((report) => report.cycle)).toEqual([1, 2, 3]);
    expect(reports.every((report) => report.runId === 7)).toBe(true);
  });

  it('starts from the neighbour that the request names, whatever it solved before, and replies where it ended', async () => {
    const service = createSimService(countingSolver(1), everyTurn);
    await service.solve(request(9));
    expect(await service.solve({ ...request(2), start: startOf(150) })).toMatchObject({
      result: { speed: 200, cycles: 150 },
      next: startOf(200),
    });
    expect(await service.solve(request(3))).toMatchObject({ result: { speed: 300, cycles: 0 } });
  });

  it('reports preliminary figures once and at once where they are asked for, and never otherwise', async () => {
    const hasty = createSimService(countingSolver(3), { ...everyTurn, longestStretch_ms: 1000 });
    const reports: TurnReport[] = [];
    hasty.watch((report) => reports.push(report));
    await hasty.solve(request(1));
    expect(reports).toEqual([]);
    await hasty.solve({ ...request(2), preview: true });
    expect(reports).toMatchObject([
      { runId: 2, preview: { speed: 200, preliminary: true }, near: startOf(200.5) },
    ]);
  });

  it('drops a run between turns when a newer one is asked for', async () => {
    const solver = countingSolver(1000);
    const service = createSimService(solver, everyTurn);
    const older = service.solve(request(1));
    await everyTurn.breathe();
    const newer = service.solve(request(2));
    expect((await older).status).toBe('dropped');
    expect(await newer).toMatchObject({ runId: 2, status: 'solved' });
    expect(solver.stepped).toBeLessThan(1010);
  });

  it('drops a run that is called off, and only that run', async () => {
    const service = createSimService(countingSolver(1000), everyTurn);
    const reply = service.solve(request(1));
    service.drop(99);
    await everyTurn.breathe();
    service.drop(1);
    expect((await reply).status).toBe('dropped');
  });

  it('never starts the middle one of three requests that come at once', async () => {
    const solver = countingSolver(5);
    const service = createSimService(solver, everyTurn);
    const replies = await Promise.all([1, 2, 3].map((runId) => service.solve(request(runId))));
    expect(replies.map((reply) => reply.status)).toEqual(['dropped', 'dropped', 'solved']);
    expect(solver.stepped).toBe(5);
  });

  it('builds a model once for points of one engine, and anew for another', async () => {
    const solver = countingSolver(1);
    const service = createSimService(solver, everyTurn);
    await service.solve(request(1, 1, 'lovage'));
    await service.solve(request(2, 1, 'lovage'));
    await service.solve(request(3, 2, 'dill'));
    expect(solver.built).toEqual(['lovage', 'dill']);
  });

  it('replies with the reason when a point has no answer', async () => {
    const service = createSimService(countingSolver(1), everyTurn);
    const backwards = { ...request(1), operating: { speed: -100, throttle: 1 } };
    expect(await service.solve(backwards)).toMatchObject({
      runId: 1,
      status: 'unsolved',
      reason: 'The crank turns backwards.',
    });
  });

  it('refuses an engine that cannot be built, with the faults as they stand', async () => {
    const service = createSimService(countingSolver(1), everyTurn);
    expect(await service.solve(request(1, 1, 'unbuildable'))).toEqual({
      runId: 1,
      status: 'refused',
      reason: 'The rod cannot go round.',
      faults: [{ path: 'train.crankRadius', message: 'The rod cannot go round.' }],
    });
  });

  it('throws on a bug and still serves the next request', async () => {
    const solver = countingSolver(1);
    const build = solver.build.bind(solver);
    solver.build = (engine) => {
      if (engine.name === 'buggy') throw new TypeError('x is not a function');
      return build(engine);
    };
    const service = createSimService(solver, everyTurn);
    await expect(service.solve(request(1, 1, 'buggy'))).rejects.toThrow('x is not a function');
    expect((await service.solve(request(2, 2))).status).toBe('solved');
  });
});
