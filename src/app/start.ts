import { startAhead } from '../workers/spawn-worker.ts';

// The first thing to run, and small: the model loads in its worker while the page loads here.
startAhead();
void import('./main.ts');
