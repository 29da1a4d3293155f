// The lesson editor. What is typed is kept in the browser at once, and told to the studio when the keys rest.
import { closeBrackets, completionKeymap } from "@codemirror/autocomplete";
import { defaultKeymap, history, historyKeymap, isolateHistory } from "@codemirror/commands";
import { lintGutter, nextDiagnostic, previousDiagnostic, setDiagnostics } from "@codemirror/lint";
import { Compartment, EditorState } from "@codemirror/state";
import { EditorView, drawSelection, keymap, lineNumbers } from "@codemirror/view";
import { completion } from "./completion.js";
import { keep } from "./drafts.js";
import { lesson } from "./language.js";
import { look } from "./look.js";

export * from "./drafts.js";
export * from "./frame.js";
export * from "./watch.js";

// Milliseconds without a key after which the handout follows.
const rest = 40;

// The smallest change that makes one text of another, so that cursor and history stay where they are.
function difference(before, after) {
  let start = 0;
  const most = Math.min(before.length, after.length);
  while (start < most && before[start] === after[start]) start++;
  let end = 0;
  while (end < most - start && before[before.length - 1 - end] === after[after.length - 1 - end]) end++;
  return { from: start, to: before.length - end, insert: after.slice(start, after.length - end) };
}

/// Puts an editor into an element. The listener is told: Typed(text), Asked("save" | "build"), Moved(line).
export function create(parent, text, label, vocabulary, listener) {
  const language = new Compartment();
  const writing = new Compartment();
  let [timer, isQuiet, isPlaced, line] = [0, false, false, 1];
  let draft = null;
  let marked = {};

  const tell = () => {
    timer = 0;
    listener.invokeMethodAsync("Typed", view.state.doc.toString());
  };
  const flush = () => {
    if (timer) {
      clearTimeout(timer);
      tell();
    }
  };
  const ask = what => () => {
    flush();
    listener.invokeMethodAsync("Asked", what);
    return true;
  };
  const changed = EditorView.updateListener.of(update => {
    if (update.docChanged && !isQuiet) {
      if (draft) keep(draft.name, draft.etag, update.state.doc.toString());
      clearTimeout(timer);
      timer = setTimeout(tell, rest);
    }
    if (update.selectionSet || update.docChanged) {
      if (!isQuiet) isPlaced = true;
      const now = update.state.doc.lineAt(update.state.selection.main.head).number;
      if (now !== line) listener.invokeMethodAsync("Moved", (line = now));
    }
  });
  const attributes = words => EditorView.contentAttributes.of({ "aria-label": words, tabindex: "0", spellcheck: "true", autocapitalize: "sentences" });
  const extensions = [
    lineNumbers(),
    lintGutter(),
    history(),
    drawSelection(),
    EditorView.lineWrapping,
    closeBrackets(),
    keymap.of([
      { key: "Mod-s", run: ask("save"), preventDefault: true },
      { key: "Mod-Enter", run: ask("build"), preventDefault: true },
      { key: "F8", run: nextDiagnostic, preventDefault: true },
      { key: "Shift-F8", run: previousDiagnostic, preventDefault: true },
      ...completionKeymap,
      ...historyKeymap,
      ...defaultKeymap,
    ]),
    lesson,
    completion(JSON.parse(vocabulary)),
    look,
    changed,
    language.of(attributes(label)),
    writing.of([]),
  ];
  const view = new EditorView({ parent, state: EditorState.create({ doc: text, extensions }) });
  view.contentDOM.addEventListener("blur", () => {
    flush();
    listener.invokeMethodAsync("Asked", "rest");
  });

  const quietly = change => {
    isQuiet = true;
    try {
      view.dispatch(change);
    } finally {
      isQuiet = false;
    }
  };

  // Without a lesson there is nothing to keep a text under, so none is taken.
  const lock = () => {
    const isLocked = draft === null;
    if (view.state.readOnly !== isLocked) {
      view.dispatch({ effects: writing.reconfigure(isLocked ? EditorState.readOnly.of(true) : []) });
    }
  };

  return {
    /// Another lesson, with the cursor at a place in it: nothing of the last one can be taken back into it.
    open: (next, name, etag, at) => {
      clearTimeout(timer);
      timer = 0;
      draft = name === null ? null : { name, etag };
      view.setState(EditorState.create({ doc: next, selection: { anchor: at }, extensions }));
      isPlaced = false;
      lock();
      view.scrollDOM.scrollTop = 0;
    },
    /// The same lesson, changed from outside; can be taken back.
    replace: next => {
      clearTimeout(timer);
      timer = 0;
      const now = view.state.doc.toString();
      if (now !== next) quietly({ changes: difference(now, next), annotations: isolateHistory.of("full") });
    },
    /// Where what is typed is kept, and which file it began from.
    based: (name, etag) => {
      draft = name === null ? null : { name, etag };
      lock();
    },
    /// Puts the cursor at a place in the text.
    place: at => view.dispatch({ selection: { anchor: Math.min(at, view.state.doc.length) }, scrollIntoView: true }),
    problems: found => {
      const doc = view.state.doc;
      // What is told of a problem would go away if it were marked again.
      if (found === marked.found && doc === marked.doc) return;
      marked = { found, doc };
      const clamp = at => Math.max(0, Math.min(at, doc.length));
      const diagnostics = JSON.parse(found).map(one => {
        const at = doc.line(Math.max(1, Math.min(one.line, doc.lines)));
        const from = clamp(at.from + Math.max(0, one.column - 1));
        const word = /^[^\s,]+/.exec(doc.sliceString(from, at.to))?.[0].length ?? 0;
        const to = clamp(from + (one.length > 0 ? one.length : word));
        const actions = one.repair
          ? [
              {
                name: one.repair.label,
                apply: view => {
                  const { start, length, text } = one.repair;
                  view.dispatch({ changes: { from: clamp(start), to: clamp(start + length), insert: text }, annotations: isolateHistory.of("full") });
                  view.focus();
                },
              },
            ]
          : [];
        return { from, to, severity: one.severity, message: one.message, actions };
      });
      view.dispatch(setDiagnostics(view.state, diagnostics));
    },
    repair: offered => {
      const { start, length, text } = JSON.parse(offered);
      view.dispatch({ changes: { from: start, to: start + length, insert: text }, selection: { anchor: start + text.length }, annotations: isolateHistory.of("full") });
    },
    goTo: (number, column) => {
      const at = view.state.doc.line(Math.max(1, Math.min(number, view.state.doc.lines)));
      const anchor = Math.min(at.to, at.from + Math.max(0, column - 1));
      view.dispatch({ selection: { anchor }, effects: EditorView.scrollIntoView(anchor, { y: "center" }) });
      view.focus();
    },
    speak: words => view.dispatch({ effects: language.reconfigure(attributes(words)) }),
    text: () => view.state.doc.toString(),
    /// Where the cursor stands; null while nobody put it anywhere.
    cursor: () => (isPlaced ? view.state.selection.main.head : null),
    focus: () => view.focus(),
    close: () => {
      flush();
      view.destroy();
    },
  };
}
