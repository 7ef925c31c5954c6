// Looks after the page's copy on this device: says how it is, and puts a newer page in its place when the user says so.
let state = 'unknown';
let hear = () => { };
let newer = null;

export function listen(told) {
    hear = told;
    hear(state);
}

export async function keep() {
    const keepers = navigator.serviceWorker;
    if (!keepers) {
        say('none');
        return;
    }

    // The first copy takes the page in hand as it is; only a newer page in place of an older one needs the page anew.
    let hadCopy = keepers.controller !== null;
    keepers.addEventListener('controllerchange', () => {
        if (hadCopy) {
            location.reload();
        }

        hadCopy = true;
    });
    try {
        const registration = await keepers.register('offline.js', { updateViaCache: 'none' });
        registration.addEventListener('updatefound', () => follow(registration.installing));
        follow(registration.waiting ?? registration.installing ?? registration.active);
        look(registration);
    } catch {
        say('none');
    }
}

export function takeNewer() {
    newer?.postMessage('take over');
}

function follow(worker) {
    const tell = () => {
        if (worker.state === 'installed' && navigator.serviceWorker.controller) {
            newer = worker;
            say('newer');
        } else if (worker.state === 'activated' || worker.state === 'redundant') {
            // A copy that failed leaves the one before as it was; where there was none, it is tried again at the next visit.
            tellCopy();
        } else if (!navigator.serviceWorker.controller) {
            say('getting');
        }
    };
    worker?.addEventListener('statechange', tell);
    tell();
}

// A page that is being built keeps no copy, and a browser short of room may have cleared it away.
async function tellCopy() {
    say((await caches.keys()).some((name) => name.startsWith('page-')) ? 'whole' : 'none');
}

// Who leaves the page open for days hears of a newer one when coming back to it.
function look(registration) {
    document.addEventListener('visibilitychange', () => {
        if (document.visibilityState === 'visible' && navigator.onLine) {
            registration.update().catch(() => { });
        }
    });
}

function say(word) {
    state = word;
    hear(word);
}
