// The worker's hold on picture files: the browser decodes them here, and rows are copied out a band at a time, so that the planner's own memory does not
// grow with the picture. A file stays on the device; what is kept here is a handle to it.
const files = new Map();
const headBytes = 262144;
const nothing = { head: new Uint8Array(0), width: 0, height: 0, bitmap: null, context: null };
let open = nothing;

export function put(key, file) {
    files.set(key, file);
    return null;
}

export function forget(key) {
    files.delete(key);
    return null;
}

// Numbers are wanted as the file has them: no colour conversion. The browser turns the picture as the file says it is to be seen.
export async function begin(key) {
    end();
    const file = files.get(key);
    if (!file) {
        throw new Error('The picture is no longer at hand: choose the file again.');
    }

    const head = new Uint8Array(await file.slice(0, headBytes).arrayBuffer());
    let bitmap = null;
    try {
        bitmap = await createImageBitmap(file, { colorSpaceConversion: 'none', premultiplyAlpha: 'none' });
    } catch {
        // What kind of file it is that cannot be decoded, its first bytes tell.
    }

    open = { head, width: bitmap?.width ?? 0, height: bitmap?.height ?? 0, bitmap, context: null };
}

export function end() {
    open.bitmap?.close();
    open = nothing;
}

export const pixelsAcross = () => open.width;
export const pixelsDown = () => open.height;
export const firstBytes = () => open.head;

export function copyRows(first, rgba) {
    const rows = rgba.length / (4 * open.width);
    if (!open.context) {
        open.context = new OffscreenCanvas(open.width, rows).getContext('2d', { willReadFrequently: true });
        open.context.globalCompositeOperation = 'copy';
        open.context.imageSmoothingEnabled = false;
    }

    open.context.drawImage(open.bitmap, 0, first, open.width, rows, 0, 0, open.width, rows);
    rgba.set(new Uint8Array(open.context.getImageData(0, 0, open.width, rows).data.buffer));
}
