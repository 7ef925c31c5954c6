// While the page is being built nothing is kept, so that every change shows.
self.addEventListener('fetch', () => { });
