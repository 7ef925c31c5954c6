// What js/text-editor.js builds the editor of a kit's text from.
export { EditorState, Compartment, Transaction } from '@codemirror/state';
export { EditorView, keymap, lineNumbers, highlightActiveLine, drawSelection } from '@codemirror/view';
export { history, historyKeymap, defaultKeymap } from '@codemirror/commands';
export { HighlightStyle, syntaxHighlighting, indentUnit } from '@codemirror/language';
export { yaml } from '@codemirror/lang-yaml';
export { setDiagnostics, lintGutter, lintKeymap } from '@codemirror/lint';
export { autocompletion, completionKeymap, startCompletion } from '@codemirror/autocomplete';
export { searchKeymap } from '@codemirror/search';
export { tags } from '@lezer/highlight';
