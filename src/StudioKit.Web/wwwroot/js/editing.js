// Keys and carets: what the page's own runtime cannot do without asking for every key that is pressed.
let pressed;

// A field has an undo of its own, for what is being typed in it.
const isTyped = (target) => target.matches?.('textarea, input:not([type=checkbox], [type=radio], [type=range], [type=button]), [contenteditable]');

document.addEventListener('keydown', (event) => {
    const key = event.key.toLowerCase();
    if (!pressed || !(event.ctrlKey || event.metaKey) || event.altKey || (key !== 'z' && key !== 'y') || isTyped(event.composedPath()[0])) {
        return;
    }

    event.preventDefault();
    pressed(key === 'y' || event.shiftKey);
});

export function listen(action) {
    pressed = action;
}

// As many characters as the reader of kits takes bytes. A plain field stands still for seconds over more, and nobody could plan it.
const MOST_CHARACTERS = 1_000_000;

export function follow(id, refused) {
    const text = document.getElementById(id);
    const numbers = text?.previousElementSibling;
    if (!numbers) {
        return;
    }

    text.addEventListener('scroll', () => { numbers.scrollTop = text.scrollTop; });
    let told = false;
    text.addEventListener('beforeinput', (event) => {
        const left = text.value.length - (text.selectionEnd - text.selectionStart);
        const isTooMuch = Boolean(event.data) && left + event.data.length > MOST_CHARACTERS;
        if (isTooMuch) {
            event.preventDefault();
        }

        if (isTooMuch !== told) {
            told = isTooMuch;
            refused(told);
        }
    });
    text.dataset.isFollowed = 'yes';
}

export function goTo(id, line, column) {
    const text = document.getElementById(id);
    if (!text) {
        return;
    }

    const before = text.value.split('\n').slice(0, line - 1);
    const place = before.reduce((sum, one) => sum + one.length + 1, 0) + column - 1;
    text.focus();
    text.setSelectionRange(place, place);
    const height = parseFloat(getComputedStyle(text).lineHeight);
    text.scrollTop = Math.max(0, (line - 1) * height - text.clientHeight / 3);
}

// A field is known by its path, its first value by the path with a place, a group and a list by their headings.
export function take(path) {
    const found = [path, `${path}[0]`, `group-${path}`, `list-${path}`].map((id) => document.getElementById(id)).find((one) => one);
    const control = found?.matches('input, select, textarea, button') ? found : found?.closest('.field')?.querySelector('input, select, button:not(.why)');
    control?.scrollIntoView({ block: 'center' });
    control?.focus();
    return Boolean(control);
}
