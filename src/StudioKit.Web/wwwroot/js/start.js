// Starts the worker first, since the first plan waits for it, then the page itself; keeps a copy of everything for where there is no network.
import './engine-link.js';
import { keep } from './page-copy.js';

await globalThis.Blazor.start();
await keep();
