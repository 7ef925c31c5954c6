// Starts the worker first, since the first plan waits for it, then the page itself; keeps a copy of everything for where there is no network.
import { planned } from './engine-link.js';
import { keep } from './page-copy.js';
import { runtimeOptions } from './runtime-options.js';

const pause = (milliseconds) => new Promise((resolve) => setTimeout(resolve, milliseconds));

await globalThis.Blazor.start({ configureRuntime: (runtime) => runtime.withRuntimeOptions(runtimeOptions) });
// The copy is made when the first plan is there and has been drawn, so that they do not wait for each other; where there is no kit to plan, after a while.
await Promise.race([planned, pause(20_000)]);
await pause(1000);
await new Promise((resolve) => (globalThis.requestIdleCallback ?? resolve)(resolve, { timeout: 5000 }));
await keep();
