// Starts the worker first, since the first plan waits for it, then the page itself; keeps a copy of everything for where there is no network.
import { planned } from './engine-link.js';
import { keep } from './page-copy.js';

await globalThis.Blazor.start();
// The copy is made when the first plan is there, so that the two do not wait for each other; where there is no kit to plan, after a while.
await Promise.race([planned, new Promise((resolve) => setTimeout(resolve, 20_000))]);
await keep();
