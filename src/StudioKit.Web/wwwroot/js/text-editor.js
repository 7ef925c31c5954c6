// The editor of a kit's text. Its parts are loaded when a text is first opened. It lives in a shadow tree, as its styles then go in as adopted sheets,
// which the page's policy allows; a style element would be refused.
import { ask } from './engine-link.js';

const pause = 500;
let parts;
let view;
let waiting;

// Says whether there was a place for it.
export async function open(id, text, changed) {
    parts ??= await import('../vendor/editor/editor.js');
    const host = document.getElementById(id);
    // The plain field was chosen while the editor was loaded.
    if (!host) {
        return false;
    }

    const root = host.attachShadow({ mode: 'open' });
    const typed = parts.EditorView.updateListener.of((update) => {
        if (update.docChanged && !update.transactions.some((one) => one.annotation(parts.Transaction.remote))) {
            clearTimeout(waiting);
            waiting = setTimeout(() => {
                waiting = undefined;
                changed(update.view.state.doc.toString());
            }, pause);
        }
    });
    view = new parts.EditorView({ root, parent: root, state: parts.EditorState.create({ doc: text, extensions: [...looks(), ...habits(), typed] }) });
    return true;
}

// What is being typed and not yet told is not overwritten.
export function setText(text) {
    const now = view.state.doc.toString();
    const wanted = text.replace(/\r\n?/g, '\n');
    if (waiting !== undefined || wanted === now) {
        return;
    }

    let head = 0;
    while (head < now.length && head < wanted.length && now[head] === wanted[head]) {
        head++;
    }

    let tail = 0;
    while (tail < Math.min(now.length, wanted.length) - head && now[now.length - tail - 1] === wanted[wanted.length - tail - 1]) {
        tail++;
    }

    view.dispatch({
        changes: { from: head, to: now.length - tail, insert: wanted.slice(head, wanted.length - tail) },
        annotations: [parts.Transaction.remote.of(true), parts.Transaction.addToHistory.of(false)],
    });
}

export function setFaults(faults) {
    const diagnostics = JSON.parse(faults).map((fault) => {
        const from = place(fault.line, fault.column);
        const line = view.state.doc.lineAt(from);
        const rest = /^("[^"]*"|'[^']*'|[^,\]}#]*)/.exec(line.text.slice(from - line.from))[0].trimEnd();
        return { from, to: Math.min(line.to, from + Math.max(1, rest.length)), severity: fault.isError ? 'error' : 'warning', message: `${fault.message} ${fault.hint}`.trimEnd() };
    });
    view.dispatch(parts.setDiagnostics(view.state, diagnostics));
}

export function goTo(line, column) {
    const at = place(line, column);
    view.dispatch({ selection: { anchor: at }, effects: parts.EditorView.scrollIntoView(at, { y: 'center' }) });
    view.focus();
}

// For whoever tries the page: all of the text, of which only what is in sight is drawn.
export function text() {
    return view.state.doc.toString();
}

function place(line, column) {
    const found = view.state.doc.line(Math.min(Math.max(1, line), view.state.doc.lines));
    return Math.min(found.to, found.from + Math.max(0, column - 1));
}

function habits() {
    return [
        parts.history(), parts.yaml(), parts.indentUnit.of('  '), parts.lintGutter(),
        parts.autocompletion({ override: [complete], icons: false }),
        parts.keymap.of([...parts.completionKeymap, ...parts.defaultKeymap, ...parts.searchKeymap, ...parts.historyKeymap, ...parts.lintKeymap]),
        parts.EditorView.contentAttributes.of({ 'aria-label': 'Text of the kit', spellcheck: 'false', tabindex: '0' }),
    ];
}

async function complete(context) {
    const answer = await ask('complete', 'complete', JSON.stringify({ text: context.state.doc.toString(), position: context.pos }), () => { });
    const found = answer ? JSON.parse(answer).candidates : [];
    const before = context.matchBefore(/[^\s:,[\]{}]+/);
    return found.length === 0 || (!context.explicit && !before) ? null : {
        from: Math.min(...found.map((one) => one.start)), filter: false,
        options: found.map((one) => ({ label: one.label, detail: one.kind, info: one.help || undefined, apply: (at) => write(at, one) })),
    };
}

function write(at, { start, length, newText }) {
    at.dispatch({ changes: { from: start, to: start + length, insert: newText }, selection: { anchor: start + newText.length }, userEvent: 'input.complete' });
}

function looks() {
    const { tags } = parts;
    return [
        parts.lineNumbers(), parts.highlightActiveLine(), parts.drawSelection(),
        parts.syntaxHighlighting(parts.HighlightStyle.define([
            { tag: [tags.propertyName, tags.definition(tags.propertyName)], color: 'var(--deep)', fontWeight: '700' },
            { tag: [tags.comment, tags.lineComment], color: 'var(--soft)', fontStyle: 'italic' },
            { tag: tags.string, color: 'var(--ink)' },
        ])),
        parts.EditorView.theme({
            '&': { height: '100%', color: 'var(--ink)', backgroundColor: 'var(--card)', fontSize: '0.95rem' },
            '&.cm-focused': { outline: '3px solid var(--deep)' },
            '.cm-content': { caretColor: 'var(--ink)' },
            '.cm-cursor': { borderLeftColor: 'var(--ink)', borderLeftWidth: '2px' },
            '.cm-gutters': { backgroundColor: 'var(--paper)', color: 'var(--soft)', borderRight: '1px solid var(--line)' },
            '.cm-activeLine, .cm-activeLineGutter': { backgroundColor: 'transparent', boxShadow: 'inset 0 -1px 0 var(--line)' },
            '&.cm-focused > .cm-scroller > .cm-selectionLayer .cm-selectionBackground, .cm-selectionBackground': { backgroundColor: 'var(--line)' },
            '.cm-tooltip': { backgroundColor: 'var(--card)', color: 'var(--ink)', border: '1px solid var(--soft)' },
            '.cm-tooltip-autocomplete > ul > li': { padding: '0.35rem 0.5rem' },
            '.cm-tooltip-autocomplete > ul > li[aria-selected]': { backgroundColor: 'var(--deep)', color: 'var(--on-deep)' },
            '.cm-completionDetail': { color: 'inherit' },
            '.cm-lintRange-error': { backgroundImage: 'none', textDecoration: 'underline wavy var(--bad)' },
            '.cm-lintRange-warning': { backgroundImage: 'none', textDecoration: 'underline dotted var(--edge)' },
            '.cm-diagnostic-error': { borderLeftColor: 'var(--bad)' },
        }),
    ];
}
