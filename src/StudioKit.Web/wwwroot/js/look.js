// Puts the look on the page before anything is painted: the one that was chosen on this device, or the strongest contrast where the device asks for more of it.
(() => {
    let look = null;
    try {
        look = localStorage.getItem('studiokit.look');
    } catch {
        // The browser keeps nothing for this page.
    }

    look ??= matchMedia('(prefers-contrast: more)').matches ? 'sun' : 'device';
    document.documentElement.dataset.look = look;
})();
