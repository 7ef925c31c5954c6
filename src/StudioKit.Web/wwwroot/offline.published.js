// Keeps the whole page on the device. A new version is put together beside the old one, and takes over when every file of it is there and the user says so or
// has left the old one: no page ever gets files of two versions.
self.importScripts('./offline-files.js');

const PREFIX = `page-${self.registration.scope}-`;
const kept = `${PREFIX}${self.assetsManifest.version}`;
const list = 'offline-files.json';
const left = /(?:^|\/)offline(?:-files)?\.js$|\.(?:br|gz|map)$/;
const files = self.assetsManifest.assets.filter(({ url }) => !left.test(url));

self.addEventListener('install', (event) => event.waitUntil(keep()));
self.addEventListener('activate', (event) => event.waitUntil(forget().then(() => self.clients.claim())));
self.addEventListener('message', ({ data }) => {
    if (data === 'take over') {
        self.skipWaiting();
    }
});
self.addEventListener('fetch', (event) => {
    if (event.request.method === 'GET' && event.request.url.startsWith(self.registration.scope)) {
        event.respondWith(serve(event.request));
    }
});

async function keep() {
    const cache = await caches.open(kept);
    try {
        const known = await knownFiles();
        const copied = await Promise.allSettled(files.map(async ({ url, hash }) => {
            const request = new Request(url, { integrity: hash, cache: 'no-cache' });
            const answer = known.get(`${hash} ${url}`) ?? await fetch(request);
            if (!answer.ok) {
                throw new Error(`${url} could not be fetched: ${answer.status}.`);
            }

            await cache.put(url, answer);
        }));
        const failed = copied.find(({ reason }) => reason);
        if (failed) {
            throw failed.reason;
        }

        await cache.put(list, new Response(JSON.stringify(files)));
    } catch (fault) {
        // Half a copy is none. All of it has come to an end by now, so that nothing is written behind this.
        await caches.delete(kept);
        throw fault;
    }
}

// What an older version has in the same state need not be fetched again.
async function knownFiles() {
    const known = new Map();
    for (const name of (await caches.keys()).filter((each) => each.startsWith(PREFIX) && each !== kept)) {
        const cache = await caches.open(name);
        for (const { url, hash } of await (await cache.match(list))?.json() ?? []) {
            const answer = await cache.match(url);
            if (answer) {
                known.set(`${hash} ${url}`, answer);
            }
        }
    }

    return known;
}

async function forget() {
    const names = await caches.keys();
    await Promise.all(names.filter((name) => name.startsWith(PREFIX) && name !== kept).map((name) => caches.delete(name)));
}

async function serve(request) {
    const cache = await caches.open(kept);
    const isStart = request.mode === 'navigate' && new URL(request.url).pathname === new URL(self.registration.scope).pathname;
    return await cache.match(isStart ? 'index.html' : request, { ignoreSearch: true }) ?? fetch(request);
}
