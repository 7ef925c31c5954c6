// The look of the page: as the device has it, light, dark, or in the strongest contrast for the sun.
export function look() {
    return document.documentElement.dataset.look;
}

export function setLook(look) {
    document.documentElement.dataset.look = look;
    try {
        localStorage.setItem('studiokit.look', look);
    } catch {
        // The look holds until the page is left.
    }
}
