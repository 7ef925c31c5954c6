// Hands a file to the visitor.
export function handOver(name, blob) {
    const link = Object.assign(document.createElement('a'), { href: URL.createObjectURL(blob), download: name });
    link.click();
    // The browser has taken the file over by then.
    setTimeout(() => URL.revokeObjectURL(link.href), 60_000);
}
