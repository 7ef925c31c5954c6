// Keeps the whole page on the device. A new version is fetched beside the old one and takes over when every file of it is there.
self.importScripts('./offline-files.js');

const kept = `page-${self.assetsManifest.version}`;
const wanted = /\.(?:js|json|wasm|dat|css|html|yaml|svg|png|ttf|woff2|webmanifest)$/;
const left = /^offline(?:-files)?\.js$/;

self.addEventListener('install', (event) => event.waitUntil(keep()));
self.addEventListener('activate', (event) => event.waitUntil(forget()));
self.addEventListener('fetch', (event) => {
    if (event.request.method === 'GET' && new URL(event.request.url).origin === self.location.origin) {
        event.respondWith(serve(event.request));
    }
});

async function keep() {
    const files = self.assetsManifest.assets.filter(({ url }) => wanted.test(url) && !left.test(url));
    const cache = await caches.open(kept);
    await cache.addAll(files.map(({ url, hash }) => new Request(url, { integrity: hash, cache: 'no-cache' })));
}

async function forget() {
    const names = await caches.keys();
    await Promise.all(names.filter((name) => name.startsWith('page-') && name !== kept).map((name) => caches.delete(name)));
}

async function serve(request) {
    const cache = await caches.open(kept);
    const found = request.mode === 'navigate' ? await cache.match('index.html') : await cache.match(request, { ignoreSearch: true });
    return found ?? fetch(request);
}
