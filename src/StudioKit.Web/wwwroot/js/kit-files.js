// Files of this device: opened by the picker or dropped on the page, written as downloads or where the user chooses.
import { handOver } from './hand-over.js';
import { texts } from './kit-store.js';
import { pack, unpack } from './zip.js';

// A little more than the reader of kits takes; it says itself that it is too much.
const MOST_BYTES = 1_000_001;
const MOST_FILES = 1000;
const MOST_ARCHIVE_BYTES = 50_000_000;

// Pinned states in an archive.
const PINS = 'pins.json';

let dropped = () => { };

// Waits for files that are dropped on the page.
export function listen(told) {
    dropped = told;
}

addEventListener('dragover', (event) => {
    if ([...event.dataTransfer?.types ?? []].includes('Files')) {
        event.preventDefault();
        event.dataTransfer.dropEffect = 'copy';
    }
});

addEventListener('drop', async (event) => {
    const files = [...event.dataTransfer?.files ?? []];
    // What a place of the page has taken, as a picture is where pictures are wanted, is no kit.
    if (files.length > 0 && !event.defaultPrevented) {
        event.preventDefault();
        dropped(await readAll(files));
    }
});

// Lets the user pick files; none where nothing was picked.
export function pick() {
    return new Promise((resolve) => {
        const input = Object.assign(document.createElement('input'), { type: 'file', multiple: true, accept: '.yaml,.yml,.zip,text/yaml,application/zip' });
        input.oncancel = () => resolve('[]');
        input.onchange = () => resolve(readAll([...input.files]));
        input.click();
    });
}

// Writes a file into the browser's folder for downloads.
export function download(name, text) {
    handOver(name, new Blob([text], { type: 'text/yaml' }));
}

export function canChoosePlace() {
    return 'showSaveFilePicker' in globalThis;
}

// Writes a kit where the user chooses, packed with what lies beside it where anything does; says whether that was done.
export async function saveInPlace(name, text, beside) {
    const files = together({ name, text, beside });
    const isPacked = files.length > 1;
    const [suggestedName, types] = isPacked
        ? [`${stem(name)}.zip`, [{ description: 'Kit with its parts', accept: { 'application/zip': ['.zip'] } }]]
        : [name, [{ description: 'Kit', accept: { 'text/yaml': ['.yaml'] } }]];
    let handle;
    try {
        handle = await globalThis.showSaveFilePicker({ suggestedName, types });
    } catch (fault) {
        if (fault.name === 'AbortError') {
            return false;
        }

        throw fault;
    }

    // What was in the file stays until all of the new is written.
    const file = await handle.createWritable();
    await file.write(isPacked ? pack(files) : text);
    await file.close();
    return true;
}

// Packs all kits, and what else is given by name and text, into one file that any unpacking program reads, and this page again; says how many kits they are.
export async function downloadAll(name, more) {
    const kits = await texts();
    const kept = Object.entries(JSON.parse(more)).map(([place, text]) => ({ name: place, text }));
    handOver(name, new Blob([pack([...kits.flatMap(together), ...kept])], { type: 'application/zip' }));
    return kits.length;
}

// Packs a kit with what lies beside it.
export function downloadTogether(name, text, beside) {
    handOver(`${stem(name)}.zip`, new Blob([pack(together({ name, text, beside }))], { type: 'application/zip' }));
}

const stem = (name) => name.replace(/\.[^.]*$/, '');

// A kit with anything beside it has a folder of its own, laid out as the command line looks for parts; what is damaged of it is left out.
function together({ name, text, beside }) {
    let kept = {};
    try {
        kept = JSON.parse(beside || '{}') ?? {};
    } catch {
        // The kit goes without.
    }

    const parts = Object.entries(kept.parts ?? {}).map(([place, part]) => ({ name: `${stem(name)}/parts/${place}.${place.startsWith('light-distributions/') ? 'ies' : 'yaml'}`, text: String(part) }));
    const pins = kept.pins?.length > 0 ? [{ name: `${stem(name)}/${PINS}`, text: JSON.stringify({ parts: {}, pins: kept.pins }) }] : [];
    return parts.length + pins.length === 0 ? [{ name, text }] : [{ name: `${stem(name)}/${name}`, text }, ...parts, ...pins];
}

async function readAll(files) {
    const read = [];
    for (const file of files.slice(0, MOST_FILES)) {
        read.push(...await readOne(file));
    }

    return JSON.stringify(read);
}

async function readOne(file) {
    try {
        if (file.type.startsWith('image/')) {
            throw new Error('It is a picture. Pictures are read under Test frames.');
        }

        if (/\.zip$/i.test(file.name)) {
            if (file.size > MOST_ARCHIVE_BYTES) {
                throw new Error('It is larger than any archive of kits.');
            }

            const entries = await unpack(new Uint8Array(await file.arrayBuffer()), MOST_FILES, MOST_BYTES);
            return await Promise.all(entries.filter(({ name }) => /\.(ya?ml|ies)$/i.test(name) || name === PINS).map(async ({ path, name, bytes }) => ({ path, name, base64: await base64(new Blob([bytes])), trouble: '' })));
        }

        return [{ path: file.name, name: file.name, base64: await base64(file.slice(0, MOST_BYTES)), trouble: '' }];
    } catch (fault) {
        return [{ path: file.name, name: file.name, base64: '', trouble: String(fault.message ?? fault) }];
    }
}

function base64(blob) {
    return new Promise((resolve, reject) => {
        const reader = new FileReader();
        reader.onload = () => resolve(reader.result.slice(reader.result.indexOf(',') + 1));
        reader.onerror = () => reject(reader.error);
        reader.readAsDataURL(blob);
    });
}
