// Pictures that the visitor picks, takes or drops. Only the worker gets to see a file, and only on this device.
import { handOver } from './hand-over.js';
import { ask } from './engine-link.js';

let last = 0;

async function hand(files, picked) {
    for (const file of files) {
        const key = `picture-${++last}`;
        await ask('hand', null, key, () => { }, file);
        picked(key, file.name);
    }
}

// Watches every file input inside an element, and what is dropped on it.
export function watch(place, picked) {
    const element = document.getElementById(place);
    for (const input of element.querySelectorAll('input[type=file]')) {
        input.addEventListener('change', async () => {
            await hand([...input.files], picked);
            input.value = '';
        });
    }

    element.addEventListener('dragover', (event) => {
        event.preventDefault();
        element.classList.add('over');
    });
    element.addEventListener('dragleave', () => element.classList.remove('over'));
    element.addEventListener('drop', (event) => {
        event.preventDefault();
        element.classList.remove('over');
        hand([...event.dataTransfer.files], picked);
    });
}

export const forget = (key) => ask('forget', null, key, () => { });

// Paints the map of a picture that was read.
export async function paint(canvas, key, width, height) {
    const points = await ask('take', null, `map:${key}`, () => { });
    const place = document.getElementById(canvas);
    if (place) {
        place.width = width;
        place.height = height;
        place.getContext('2d').putImageData(new ImageData(new Uint8ClampedArray(points.buffer, points.byteOffset, points.byteLength), width, height), 0, 0);
    }
}

// Saves a text as a file.
export function saveText(name, text) {
    handOver(name, new Blob([text], { type: 'application/yaml' }));
}
