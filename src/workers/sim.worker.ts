import * as Comlink from 'comlink';
import { buildModel, solve } from '../sim/index.ts';
import type { SimService } from './api.ts';
import { buffersOf } from './buffers-of.ts';
import { createSimService } from './sim-service.ts';
import { answerStudy } from './study-questions.ts';

const { port1, port2 } = new MessageChannel();
let resume: (() => void) | null = null;
port1.onmessage = () => resume?.();

const service = createSimService(
  { build: buildModel, solve },
  {
    now: () => performance.now(),
    // A message to oneself: unlike a timer it is never held back, and waiting requests come before it.
    breathe: () =>
      new Promise((resolve) => {
        resume = resolve;
        port2.postMessage(null);
      }),
    longestStretch_ms: 8,
  },
  answerStudy,
);

const sent: SimService = {
  ...service,
  watch: (listener) =>
    service.watch((report) => listener(Comlink.transfer(report, buffersOf([report.preview, report.near])))),
  solve: async (request) => {
    const reply = await service.solve(request);
    return Comlink.transfer(reply, buffersOf(reply));
  },
  study: async (request) => {
    const reply = await service.study(request);
    return Comlink.transfer(reply, buffersOf(reply));
  },
};
Comlink.expose(sent);
