import { mount } from 'svelte';
import { poolSize, SimClient } from '../workers/sim-client.ts';
import { spawnWorker } from '../workers/spawn-worker.ts';
import App from './App.svelte';
import { openMemory } from './sheets/memory.ts';
import './theme.css';
import { Workbench } from './workbench.svelte.ts';

const secondsNow = (): number => performance.now() / 1000;
const client = new SimClient(spawnWorker, poolSize(navigator.hardwareConcurrency), secondsNow);

setInterval(() => client.tick(), 1000);

const workbench = new Workbench(client, await openMemory());

mount(App, { target: document.getElementById('app')!, props: { workbench } });
