import { parentPort, workerData } from 'node:worker_threads';
import nodeEndpoint from 'comlink/dist/esm/node-adapter.mjs';

/** A thread that serves with whichever bundle of the core it is given. */
const { serve } = await import(workerData.core);
serve(nodeEndpoint(parentPort));
