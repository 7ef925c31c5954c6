// The page's end of the line to the worker: each question has a number, and its answer comes back with it.
import { handOver } from './hand-over.js';

const worker = new Worker(new URL('engine-worker.js', import.meta.url), { type: 'module', name: 'engine' });
const waiting = new Map();
let last = 0;
let tellPlanned;

// When the first plan is there, or has failed.
export const planned = new Promise((resolve) => { tellPlanned = resolve; });

worker.onmessage = ({ data }) => {
    const asked = waiting.get(data.number);
    if (!asked) {
        return;
    }

    if ('step' in data) {
        asked.progress(data.step);
        return;
    }

    waiting.delete(data.number);
    if (asked.kind === 'plan') {
        tellPlanned();
    }

    if ('fault' in data) {
        asked.reject(new Error(data.fault));
    } else {
        asked.resolve(data.answer);
    }
};

worker.onerror = (event) => {
    for (const asked of waiting.values()) {
        asked.reject(new Error(event.message || 'The planner could not be started.'));
    }

    waiting.clear();
};

export function ask(kind, lane, request, progress, file) {
    const number = ++last;
    return new Promise((resolve, reject) => {
        waiting.set(number, { kind, resolve, reject, progress });
        worker.postMessage({ number, kind, lane, request, file });
    });
}

const kinds = { pdf: 'application/pdf', svg: 'image/svg+xml', csv: 'text/csv', zip: 'application/zip' };

// A file goes from the worker to the visitor without passing through the page's own runtime.
export async function save(name) {
    const bytes = await ask('take', null, name, () => { });
    handOver(name, new Blob([bytes], { type: kinds[name.split('.').pop()] ?? 'application/octet-stream' }));
}
