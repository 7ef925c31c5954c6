// Kits that come with the page, read from beside it; offline from the page's copy.
export async function text(name) {
    const answer = await fetch(new URL(`../kits/${name}`, import.meta.url));
    if (!answer.ok) {
        throw new Error(`The kit could not be fetched: ${answer.status}.`);
    }

    return await answer.text();
}
