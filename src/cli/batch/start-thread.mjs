import { register } from 'tsx/esm/api';

// A thread does not inherit the reading of TypeScript that the command line was started with.
register();
await import('./answer.worker.ts');
