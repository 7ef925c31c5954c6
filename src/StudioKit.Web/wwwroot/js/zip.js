// Writes and reads archives by the published application note of the ZIP format (.ZIP File Format Specification, sections 4.3 and 4.4): stored on writing,
// stored or deflated on reading. Numbers are little-endian.
// So much of an archive is read at most, whatever it unpacks to: more than a device's kits, less than would hurt a phone.
const MOST_IN_ALL = 50_000_000;

const LOCAL = 0x04034b50;
const CENTRAL = 0x02014b50;
const END = 0x06054b50;
const END_LENGTH = 22;
const LONGEST_COMMENT = 65_535;
const VERSION_NEEDED = 20;
const UTF8_NAMES = 1 << 11;
const ENCRYPTED = 1;
const STORED = 0;
const DEFLATED = 8;

// 1 January 1980, the first day that the format knows: an archive tells nothing about when it was made.
const FIRST_DAY = (1 << 5) | 1;

const crcTable = Uint32Array.from({ length: 256 }, (_, byte) => {
    let value = byte;
    for (let bit = 0; bit < 8; bit++) {
        value = value & 1 ? 0xedb88320 ^ (value >>> 1) : value >>> 1;
    }

    return value;
});

export function crc32(bytes) {
    let value = -1;
    for (const byte of bytes) {
        value = crcTable[(value ^ byte) & 0xff] ^ (value >>> 8);
    }

    return ~value >>> 0;
}

// Makes an archive of texts: [{ name, text }].
export function pack(files) {
    const parts = [];
    const list = [];
    let at = 0;
    for (const { name, text } of files) {
        const [nameBytes, bytes] = [name, text].map((part) => new TextEncoder().encode(part));
        const about = [VERSION_NEEDED, UTF8_NAMES, STORED, 0, FIRST_DAY].map(u16).concat([crc32(bytes), bytes.length, bytes.length].map(u32), [nameBytes.length, 0].map(u16));
        const head = join([u32(LOCAL), ...about, nameBytes]);
        parts.push(head, bytes);
        list.push(join([u32(CENTRAL), u16(VERSION_NEEDED), ...about, ...[0, 0, 0].map(u16), u32(0), u32(at), nameBytes]));
        at += head.length + bytes.length;
    }

    const directory = join(list);
    return join([...parts, directory, u32(END), ...[0, 0, files.length, files.length].map(u16), u32(directory.length), u32(at), u16(0)]);
}

// Reads an archive: at most so many files, and of each at most so many bytes, whatever it says of itself.
export async function unpack(bytes, mostFiles, mostBytes) {
    const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
    const end = findEnd(view);
    const count = Math.min(view.getUint16(end + 10, true), mostFiles);
    const files = [];
    let sum = 0;
    for (let index = 0, at = view.getUint32(end + 16, true); index < count; index++) {
        const { name, file, next } = entry(view, at);
        if (!name.endsWith('/')) {
            const plain = await content(view, file, mostBytes);
            sum += plain.length;
            if (sum > MOST_IN_ALL) {
                throw new Error('It holds more than this page takes at once.');
            }

            files.push({ path: name.replaceAll('\\', '/'), name: name.slice(Math.max(name.lastIndexOf('/'), name.lastIndexOf('\\')) + 1), bytes: plain });
        }

        at = next;
    }

    return files;
}

function findEnd(view) {
    for (let at = view.byteLength - END_LENGTH; at >= Math.max(0, view.byteLength - END_LENGTH - LONGEST_COMMENT); at--) {
        if (view.getUint32(at, true) === END) {
            return at;
        }
    }

    throw new Error('It is no archive, or was cut off.');
}

function entry(view, at) {
    if (at + 46 > view.byteLength || view.getUint32(at, true) !== CENTRAL) {
        throw new Error('Its list of files is damaged.');
    }

    const [nameLength, extraLength, commentLength] = [28, 30, 32].map((offset) => view.getUint16(at + offset, true));
    const name = new TextDecoder().decode(bytesOf(view, at + 46, nameLength));
    const file = { flags: view.getUint16(at + 8, true), method: view.getUint16(at + 10, true), crc: view.getUint32(at + 16, true), packed: view.getUint32(at + 20, true), start: view.getUint32(at + 42, true) };
    return { name, file, next: at + 46 + nameLength + extraLength + commentLength };
}

async function content(view, { flags, method, crc, packed, start }, mostBytes) {
    if (start + 30 > view.byteLength || view.getUint32(start, true) !== LOCAL) {
        throw new Error('A file in it is damaged.');
    }

    if (flags & ENCRYPTED || (method !== STORED && method !== DEFLATED)) {
        throw new Error('It is packed in a way that this page does not read.');
    }

    const data = bytesOf(view, start + 30 + view.getUint16(start + 26, true) + view.getUint16(start + 28, true), packed);
    const plain = method === STORED ? data.slice(0, mostBytes) : await inflate(data, mostBytes);
    if (plain.length < mostBytes && crc32(plain) !== crc) {
        throw new Error('A file in it is damaged.');
    }

    return plain;
}

async function inflate(data, mostBytes) {
    const reader = new Blob([data]).stream().pipeThrough(new DecompressionStream('deflate-raw')).getReader();
    const parts = [];
    let length = 0;
    for (let next = await reader.read(); !next.done && length < mostBytes; next = await reader.read()) {
        parts.push(next.value);
        length += next.value.length;
    }

    reader.cancel();
    return join(parts).slice(0, mostBytes);
}

function bytesOf(view, at, length) {
    if (at + length > view.byteLength) {
        throw new Error('It was cut off.');
    }

    return new Uint8Array(view.buffer, view.byteOffset + at, length);
}

function join(parts) {
    const whole = new Uint8Array(parts.reduce((sum, part) => sum + part.length, 0));
    let at = 0;
    for (const part of parts) {
        whole.set(part, at);
        at += part.length;
    }

    return whole;
}

function u16(number) {
    return Uint8Array.of(number & 0xff, number >>> 8);
}

function u32(number) {
    return Uint8Array.of(number & 0xff, (number >>> 8) & 0xff, (number >>> 16) & 0xff, number >>> 24);
}
