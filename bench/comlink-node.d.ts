/** The package has no types for this file of its own. */
declare module 'comlink/dist/esm/node-adapter.mjs' {
  import type { Worker } from 'node:worker_threads';
  import type { Endpoint } from 'comlink';
  export default function nodeEndpoint(worker: Worker): Endpoint;
}
