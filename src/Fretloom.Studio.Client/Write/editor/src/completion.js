// What can be written at the cursor, from the lists that the studio gives.
import { autocompletion } from "@codemirror/autocomplete";
import { lessonLines } from "./language.js";

const options = (words, type, extra = {}) => words.map(label => ({ label, type, ...extra }));

function ofFront(line, vocabulary, from, explicit) {
  const colon = line.before.indexOf(":");
  if (colon < 0)
    return { from, options: options(vocabulary.front.map(key => key.name), "property").map(one => ({ ...one, apply: one.label + ": " })) };
  const values = vocabulary.front.find(key => key.name === line.before.slice(0, colon).trim())?.values ?? [];
  const start = colon + 1 + /^\s*/.exec(line.before.slice(colon + 1))[0].length;
  return values.length > 0 && (explicit || line.before.length > start)
    ? { from: from + start, options: options(values, "enum") }
    : null;
}

// A phrase begins after a comma, or where the sentence begins.
function ofSentence(line, kind, vocabulary, from, explicit) {
  const start = kind === "claim" ? claimStart(line.before) : phraseStart(line.before);
  if (!explicit && line.before.length === start) return null;
  // In the order of a sentence until something is typed; then the best matches come first.
  const isBare = line.before.length === start;
  const section = (name, rank) => (name ? { section: { name, rank: isBare ? rank : "dynamic" } } : {});
  // What begins a sentence is not said again behind a comma.
  const groups = (vocabulary[kind] ?? []).slice(line.before.slice(0, start).includes(",") ? 1 : 0);
  const ordered = (option, at) => (isBare ? { ...option, boost: Math.max(-99, 99 - at) } : option);
  const words = groups.flatMap((group, rank) => options(group.words, "text", section(group.name, rank)).map(ordered));
  const keys = options(vocabulary.options[kind] ?? [], "property", section("options of the block", line.isFirst ? words.length : -1)).map(one => ({ ...one, apply: one.label + ": " }));
  return { from: from + start, options: start === 0 || line.before.trim() === line.before ? [...words, ...keys] : words };
}

function phraseStart(before) {
  const comma = before.lastIndexOf(",");
  return comma + 1 + /^\s*(?:show\s+|play\s+)?/.exec(before.slice(comma + 1))[0].length;
}

function claimStart(before) {
  const comma = before.lastIndexOf(",");
  return comma + 1 + /^\s*/.exec(before.slice(comma + 1))[0].length;
}

function ofFence(line, from) {
  const found = /^(\s*)(`{3,})(\w*)$/.exec(line.before);
  return found && { from: from + found[1].length + found[2].length, options: options(["show", "play", "claim"], "keyword") };
}

export const completion = vocabulary =>
  autocompletion({
    icons: false,
    // All there are: what is not seen cannot be gone to.
    maxRenderedOptions: 500,
    override: [
      context => {
        const line = context.state.doc.lineAt(context.pos);
        const { part, kind } = context.state.field(lessonLines)[line.number - 1] ?? {};
        const above = context.state.field(lessonLines)[line.number - 2];
        const here = { before: line.text.slice(0, context.pos - line.from), isFirst: above?.part === "fence" };
        if (part === "front") return ofFront(here, vocabulary, line.from, context.explicit);
        if (part === "fence") return ofFence(here, line.from);
        if (part === "sentence" || part === "option") return ofSentence(here, kind, vocabulary, line.from, context.explicit);
        return null;
      },
    ],
  });
