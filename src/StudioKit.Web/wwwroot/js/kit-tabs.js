// Which tab works on which kit: a tab holds a lock of the browser for its kit. Others wait for it, may ask for it, and see what is changed.
import { channel, remembered } from './kit-store.js';

const OPENING = 'studiokit.opening';
const PATIENCE_MS = 1500;

// The lock in hand, and the wait for one.
let held = null;
let waiting = null;
let opening = '';
let hear = () => { };

// Tells 'changed ID', 'asked ID', 'lost ID', 'gained ID'.
export function listen(told) {
    hear = told;
    channel?.addEventListener('message', ({ data }) => hear(`${data.about} ${data.id}`));
    addEventListener('pagehide', () => {
        remembered(() => localStorage.removeItem(OPENING));
    });
    document.addEventListener('visibilitychange', () => {
        if (document.visibilityState === 'hidden') {
                remembered(() => localStorage.removeItem(OPENING));
        } else if (opening) {
            remembered(() => localStorage.setItem(OPENING, opening));
        }
    });
}

// Takes a kit in hand; says whether no other tab has it.
export async function hold(id) {
    letGo();
    if (!navigator.locks) {
        return true;
    }

    if (await take(id, { ifAvailable: true })) {
        return true;
    }

    waiting = new AbortController();
    take(id, { signal: waiting.signal }).then((taken) => taken && hear(`gained ${id}`));
    return false;
}

// Takes a kit that another tab has: that tab is asked to write what it has and let go; one that does not answer loses it.
export async function takeOver(id) {
    waiting?.abort();
    waiting = null;
    channel?.postMessage({ about: 'asked', id });
    return await take(id, { signal: AbortSignal.timeout(PATIENCE_MS) }) || take(id, { steal: true });
}

export function letGo() {
    waiting?.abort();
    waiting = null;
    held?.release();
    held = null;
}

// Waits behind the tab that asked.
export function handOver(id) {
    letGo();
    setTimeout(() => hold(id).then((isFree) => isFree && hear(`gained ${id}`)), PATIENCE_MS);
}

function take(id, options) {
    return new Promise((resolve) => {
        navigator.locks.request(`studiokit-kit-${id}`, options, (lock) => {
            resolve(lock !== null);
            return lock && new Promise((release) => {
                held = { id, release };
            });
        }).catch(() => {
            resolve(false);
            if (held?.id === id) {
                held = null;
                hear(`lost ${id}`);
            }
        });
    });
}

// A kit that is being opened is marked until it is planned. A mark that is found at the start tells of a page that died over a kit.
export function markOpening(id) {
    opening = id;
    write(id);
}

export function markedOpening() {
    return remembered(() => localStorage.getItem(OPENING)) ?? '';
}

function write(mark) {
    remembered(() => (mark ? localStorage.setItem(OPENING, mark) : localStorage.removeItem(OPENING)));
}

// What is not saved is not to be closed by a slip of the hand.
let isUnsaved = false;
export function guard(unsaved) {
    isUnsaved = unsaved;
}

addEventListener('beforeunload', (event) => {
    if (isUnsaved) {
        event.preventDefault();
    }
});
