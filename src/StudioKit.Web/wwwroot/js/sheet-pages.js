// Shows pages as pictures. Each stands in a shadow tree of its own, as the ids in one page's text may be those of another's.
const parser = new DOMParser();

export function show(place, pages, title) {
    place.replaceChildren(...pages.map((text, i) => {
        const leaf = document.createElement('div');
        leaf.className = 'leaf';
        leaf.setAttribute('role', 'img');
        leaf.setAttribute('aria-label', `${title}, page ${i + 1} of ${pages.length}`);
        const picture = parser.parseFromString(text, 'image/svg+xml').documentElement;
        picture.setAttribute('width', '100%');
        picture.removeAttribute('height');
        picture.setAttribute('aria-hidden', 'true');
        leaf.attachShadow({ mode: 'open' }).append(document.importNode(picture, true));
        return leaf;
    }));
}
