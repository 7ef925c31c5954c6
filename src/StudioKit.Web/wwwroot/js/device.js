// Small things of the device. A browser that forbids storage, or has no lock for its screen, is no reason to fail.
let lock = null;
let wanted = false;

export function keep(name, note) {
    try {
        if (note) {
            localStorage.setItem(name, note);
        } else {
            localStorage.removeItem(name);
        }
    } catch {
        // Kept in the page alone then.
    }
}

export function kept(name) {
    try {
        return localStorage.getItem(name) ?? '';
    } catch {
        return '';
    }
}

export async function stayAwake(awake) {
    wanted = awake;
    if (!awake) {
        await lock?.release();
        lock = null;
        return false;
    }

    try {
        lock = await navigator.wakeLock.request('screen');
        return true;
    } catch {
        return false;
    }
}

// The lock is lost whenever the page is out of sight.
document.addEventListener('visibilitychange', () => {
    if (wanted && document.visibilityState === 'visible') {
        stayAwake(true);
    }
});

export function buzz() {
    navigator.vibrate?.([300, 150, 300]);
}
