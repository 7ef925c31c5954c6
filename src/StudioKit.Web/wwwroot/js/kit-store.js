// Kits on this device, in the browser's own database. Every write names the state of the kit that it was made from, and is refused where the kit is newer:
// the database takes the writes of all tabs one after the other, so a late write never replaces a newer one.
const NAME = 'studiokit';

// A page that knows a lower number than the database has is refused by the database itself, which then stays as it is.
const VERSION = 1;
const KITS = 'kits';
const LAST = 'studiokit.last';
const KEPT_AFTER_THROWING_MS = 30 * 24 * 3600 * 1000;

// State of each kit as this tab last wrote or read it.
const known = new Map();
let opened = null;

export async function list() {
    const kits = await read((store) => store.getAll());
    return JSON.stringify(kits.map(line).sort((a, b) => b.changed - a.changed));
}

export async function load(id) {
    const kit = await read((store) => store.get(id));
    if (!kit) {
        return null;
    }

    known.set(id, kit.revision);
    return JSON.stringify({ id, name: kit.name, text: kit.text, beside: kit.beside ?? '' });
}

export async function text(id) {
    return (await read((store) => store.get(id)))?.text ?? null;
}

// What lies beside a kit, as the page wrote it: parts of its own and pinned states.
export async function beside(id) {
    return (await read((store) => store.get(id)))?.beside ?? '';
}

export function keepBeside(id, beside) {
    return change(id, (kit) => {
        kit.beside = beside;
    });
}

// All kits with their texts and what lies beside them, but for those that were thrown away. Each has a kit's ending, by which it is found when it comes in again.
export async function texts() {
    const kits = await read((store) => store.getAll());
    return kits.filter(({ thrownAway }) => !thrownAway).map(({ name, text, beside }) => ({ name: /\.ya?ml$/i.test(name) ? name : `${name}.yaml`, text, beside: beside ?? '' }));
}

export async function add(name, text, beside) {
    const kit = { id: crypto.randomUUID(), name, text, beside, revision: 1, changed: Date.now(), thrownAway: 0 };
    await write((store) => withAll(store, (all) => {
        kit.name = freeName(name, all);
        store.put(kit);
    }));
    known.set(kit.id, kit.revision);
    tell(kit.id);
    return JSON.stringify({ id: kit.id, name: kit.name, text, beside });
}

// Says 'saved', 'newer' where another tab was faster, or 'gone' where the kit is no more.
export async function save(id, text) {
    let outcome = 'gone';
    let revision = 0;
    await write((store) => {
        const asked = store.get(id);
        asked.onsuccess = () => {
            const kit = asked.result;
            outcome = !kit ? 'gone' : kit.revision === known.get(id) ? 'saved' : 'newer';
            if (outcome === 'saved') {
                revision = kit.revision + 1;
                store.put({ ...kit, text, revision, changed: Date.now(), thrownAway: 0 });
            }
        };
    }, () => outcome === 'saved' && known.set(id, revision));
    if (outcome === 'saved') {
        tell(id);
    }

    return outcome;
}

// Gives a kit another name, and says which: names on this device differ, so that files made of them do.
export async function rename(id, name) {
    let given = name;
    await change(id, (kit, others) => {
        given = kit.name = freeName(name, others);
    });
    return given;
}

// What is thrown away stays for a month and can be taken back.
export function throwAway(id) {
    return change(id, (kit) => {
        kit.thrownAway = Date.now();
    });
}

export function takeBack(id) {
    return change(id, (kit, others) => {
        kit.thrownAway = 0;
        kit.name = freeName(kit.name, others);
    });
}

export function clearOut() {
    return write((store) => withAll(store, (all) => all
        .filter(({ thrownAway }) => thrownAway && Date.now() - thrownAway > KEPT_AFTER_THROWING_MS)
        .forEach(({ id }) => store.delete(id))));
}

export function last() {
    return remembered(() => localStorage.getItem(LAST)) ?? '';
}

export function setLast(id) {
    remembered(() => localStorage.setItem(LAST, id));
}

// Tells how much of the room that the browser gives is used, and whether it promised to keep what is there.
export async function room() {
    const { usage = 0, quota = 0 } = await navigator.storage?.estimate?.() ?? {};
    return JSON.stringify({ usedMegabytes: usage / 1e6, givenMegabytes: quota / 1e6, isPromised: await navigator.storage?.persisted?.() ?? false });
}

export async function askToKeep() {
    return await navigator.storage?.persist?.() ?? false;
}

function tell(id) {
    channel?.postMessage({ about: 'changed', id });
}

export const channel = globalThis.BroadcastChannel ? new BroadcastChannel('studiokit-kits') : null;

// The browser may refuse even to be asked.
export function remembered(ask) {
    try {
        return ask();
    } catch {
        return null;
    }
}

function line({ id, name, text, changed, thrownAway }) {
    return { id, name, changed, changedText: moment(changed), kilobytes: Math.ceil(text.length / 1000), isThrownAway: thrownAway > 0 };
}

// The reader's own time of day, in the form that ISO 8601 gives dates.
function moment(milliseconds) {
    const date = new Date(milliseconds);
    const two = (number) => String(number).padStart(2, '0');
    return `${date.getFullYear()}-${two(date.getMonth() + 1)}-${two(date.getDate())} ${two(date.getHours())}:${two(date.getMinutes())}`;
}

export function freeName(name, others) {
    const taken = new Set(others.filter(({ thrownAway }) => !thrownAway).map((other) => other.name.toLowerCase()));
    const dot = name.lastIndexOf('.');
    const [stem, ending] = dot > 0 ? [name.slice(0, dot), name.slice(dot)] : [name, ''];
    let free = name;
    for (let number = 2; taken.has(free.toLowerCase()); number++) {
        free = `${stem.replace(/ \(\d+\)$/, '')} (${number})${ending}`;
    }

    return free;
}

// Alters what is said about a kit; its text and state stay.
async function change(id, alter) {
    await write((store) => withAll(store, (all) => {
        const kit = all.find((each) => each.id === id);
        if (kit) {
            alter(kit, all.filter((other) => other !== kit));
            store.put(kit);
        }
    }));
    tell(id);
}

function withAll(store, use) {
    const asked = store.getAll();
    asked.onsuccess = () => use(asked.result);
}

async function read(ask) {
    const database = await connect();
    return new Promise((resolve, reject) => {
        const asked = ask(database.transaction(KITS).objectStore(KITS));
        asked.onsuccess = () => resolve(asked.result);
        asked.onerror = () => reject(trouble(asked.error));
    });
}

// The change is made in one piece, and it is on the disk when this comes back.
async function write(alter, done = () => { }) {
    const database = await connect();
    return new Promise((resolve, reject) => {
        const transaction = database.transaction(KITS, 'readwrite', { durability: 'strict' });
        transaction.oncomplete = () => {
            done();
            resolve();
        };
        transaction.onabort = () => reject(trouble(transaction.error));
        alter(transaction.objectStore(KITS));
    }).catch((fault) => {
        throw trouble(fault);
    });
}

function connect() {
    opened ??= new Promise((resolve, reject) => {
        const asked = indexedDB.open(NAME, VERSION);
        asked.onupgradeneeded = () => asked.result.createObjectStore(KITS, { keyPath: 'id' });
        asked.onblocked = () => reject(named('waiting'));
        asked.onerror = () => reject(trouble(asked.error));
        asked.onsuccess = () => {
            const database = asked.result;
            const left = () => {
                database.close();
                opened = null;
            };

            // A newer page in another tab needs the database for itself; one that was cleared away is made anew.
            database.onversionchange = left;
            database.onclose = left;
            resolve(database);
        };
    }).catch((fault) => {
        opened = null;
        throw trouble(fault);
    });
    return opened;
}

// A fault in one word, as the page has sentences for them.
function trouble(fault) {
    return { QuotaExceededError: named('full'), VersionError: named('newer-page') }[fault?.name] ?? (fault?.isNamed ? fault : named('refused', fault));
}

function named(word, cause) {
    return Object.assign(new Error(cause?.message ? `${word}: ${cause.message}` : word), { isNamed: true });
}
