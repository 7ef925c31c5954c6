// Lets a hand or the keyboard move the marks of a drawing. The mark moves at once; the page is told at most so many times a second, and once when the hand lets go.
// A mark is an element with data-moves: a list of axes, each with the key and bounds of a value, the value that the mark was drawn for, and how the value follows from a place in
// the drawing: along x and y in units a millimetre, or by the angle about a pivot.
const interval = 66;
const quiet = 500;
const followed = new WeakMap();

// One hand at a time: what a second finger takes meanwhile stays where it is.
let inHand = null;

export function follow(drawing, tell) {
    const svg = document.getElementById(drawing);
    if (!svg || followed.has(svg)) {
        return;
    }

    followed.set(svg, tell);
    svg.addEventListener('pointerdown', begin);
    // Browsers take no heed of touch-action on parts of a drawing, so a finger that takes a mark has to be told itself that nothing is scrolled.
    svg.addEventListener('touchstart', (event) => markOf(event) && event.preventDefault(), { passive: false });
    svg.addEventListener('keydown', press);
    svg.addEventListener('click', tap);
    // Drawn anew for another value, a mark needs that much less of a push.
    new MutationObserver((changes) => changes.forEach(({ target }) => target.moving && place(target))).observe(svg, { subtree: true, attributes: true, attributeFilter: ['data-moves'] });
}

// Forgets what is moved: the drawing shows what is.
export function settle(drawing) {
    for (const mark of document.getElementById(drawing)?.querySelectorAll('[data-moves]') ?? []) {
        if (!mark.isBusy) {
            mark.removeAttribute('transform');
            mark.moving = null;
        }
    }
}

const markOf = (event) => event.target.closest('[data-moves]');

const axesOf = (mark) => JSON.parse(mark.dataset.moves);

const held = (axis, value) => Math.min(axis.most, Math.max(axis.least, Math.round(value / axis.step) * axis.step));

function spot(toDrawing, event) {
    const at = new DOMPoint(event.clientX, event.clientY).matrixTransform(toDrawing);
    return { x: at.x, y: at.y };
}

const intoDrawing = (svg) => svg.getScreenCTM().inverse();

function angleAbout(pivot, at) {
    return (Math.atan2(pivot.y - at.y, pivot.x - at.x) * 180) / Math.PI;
}

// How far the mark has to be pushed from where it is drawn to show the value that it is moved to.
function place(mark) {
    const push = { x: 0, y: 0 };
    let turn = '';
    for (const axis of axesOf(mark)) {
        const more = (mark.moving[axis.key] ?? axis.value) - axis.value;
        if (axis.pivot) {
            turn = `rotate(${more} ${axis.pivot.x} ${axis.pivot.y})`;
        } else {
            const square = axis.x * axis.x + axis.y * axis.y;
            push.x += (more * axis.x) / square;
            push.y += (more * axis.y) / square;
        }
    }

    mark.setAttribute('transform', `translate(${push.x} ${push.y}) ${turn}`);
    if (!mark.isBusy && axesOf(mark).every((axis) => !(axis.key in mark.moving) || mark.moving[axis.key] === axis.value)) {
        mark.removeAttribute('transform');
        mark.moving = null;
    }
}

function say(mark, phase) {
    const tell = followed.get(mark.ownerSVGElement);
    tell(phase, JSON.stringify(Object.entries(mark.moving ?? {}).map(([key, value]) => ({ key, value }))));
}

function begin(event) {
    const mark = markOf(event);
    if (!mark || event.button !== 0) {
        return;
    }

    event.preventDefault();
    if (inHand?.isConnected) {
        return;
    }

    inHand = mark;
    clearTimeout(mark.waiting);
    mark.focus({ preventScroll: true });
    mark.setPointerCapture(event.pointerId);
    // The page redraws while the hand moves, and words above the drawing may push it down: what counts is how far the hand goes from where it took the mark.
    const toDrawing = intoDrawing(mark.ownerSVGElement);
    const from = spot(toDrawing, event);
    const start = axesOf(mark).map((axis) => ({ ...axis, value: mark.moving?.[axis.key] ?? axis.value }));
    let last = 0;
    mark.moving ??= {};
    mark.isBusy = true;

    const move = (moved) => {
        if (moved.pointerId !== event.pointerId) {
            return;
        }

        const at = spot(toDrawing, moved);
        for (const axis of start) {
            const value = axis.pivot
                ? axis.value + angleAbout(axis.pivot, at) - angleAbout(axis.pivot, from)
                : axis.value + (at.x - from.x) * axis.x + (at.y - from.y) * axis.y;
            mark.moving[axis.key] = held(axis, value);
        }

        place(mark);
        if (performance.now() - last >= interval) {
            last = performance.now();
            say(mark, 'move');
        }
    };

    const listening = new AbortController();
    mark.letGo = (phase) => {
        listening.abort();
        mark.letGo = null;
        inHand = null;
        mark.isBusy = false;
        finish(mark, phase);
    };
    const end = (phase) => (ended) => ended.pointerId === event.pointerId && mark.letGo(phase);
    for (const [kind, told] of [['pointermove', move], ['pointerup', end('drop')], ['pointercancel', end('cancel')], ['lostpointercapture', end('cancel')]]) {
        mark.addEventListener(kind, told, { signal: listening.signal });
    }
}

function finish(mark, phase) {
    if (!mark.moving || Object.keys(mark.moving).length === 0) {
        mark.moving = null;
        return;
    }

    if (phase === 'cancel') {
        mark.removeAttribute('transform');
        mark.moving = null;
    }

    say(mark, phase);
}

function press(event) {
    const mark = markOf(event);
    if (!mark || event.ctrlKey || event.altKey || event.metaKey) {
        return;
    }

    if (event.key === 'Escape' && mark.moving) {
        event.preventDefault();
        clearTimeout(mark.waiting);
        mark.isBusy = false;
        if (mark.letGo) {
            mark.letGo('cancel');
        } else {
            finish(mark, 'cancel');
        }

        return;
    }

    if (mark.letGo) {
        return;
    }

    const axes = axesOf(mark);
    const axis = axes.length > 1 && (event.key === 'ArrowUp' || event.key === 'ArrowDown') ? axes[1] : axes[0];
    const now = mark.moving?.[axis.key] ?? axis.value;
    const next = pressed(axis, now, event.key);
    if (next === null) {
        return;
    }

    event.preventDefault();
    mark.moving ??= {};
    mark.isBusy = true;
    mark.moving[axis.key] = held(axis, next);
    place(mark);
    say(mark, 'move');
    clearTimeout(mark.waiting);
    // Some presses after one another are one change.
    mark.waiting = setTimeout(() => {
        mark.isBusy = false;
        finish(mark, 'drop');
    }, quiet);
}

function pressed(axis, now, key) {
    switch (key) {
        case 'ArrowRight':
        case 'ArrowUp':
            return now + axis.step;
        case 'ArrowLeft':
        case 'ArrowDown':
            return now - axis.step;
        case 'PageUp':
            return now + 10 * axis.step;
        case 'PageDown':
            return now - 10 * axis.step;
        case 'Home':
            return axis.least;
        case 'End':
            return axis.most;
        default:
            return null;
    }
}

// A place of the map that is touched goes to the mark that asks about places.
function tap(event) {
    const map = event.target.closest('[data-asks]');
    const mark = map && document.getElementById(map.dataset.asks);
    if (!mark) {
        return;
    }

    const svg = mark.ownerSVGElement;
    const at = spot(intoDrawing(svg), event);
    mark.moving = {};
    for (const axis of axesOf(mark)) {
        mark.moving[axis.key] = held(axis, axis.origin + at.x * axis.x + at.y * axis.y);
    }

    place(mark);
    say(mark, 'drop');
}
