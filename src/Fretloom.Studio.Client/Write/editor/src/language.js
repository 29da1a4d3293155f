// Markdown with the front matter and the blocks of a lesson: what each line is, and what stands out in it.
import { HighlightStyle, Language, defineLanguageFacet, syntaxHighlighting } from "@codemirror/language";
import { StateField } from "@codemirror/state";
import { Decoration, ViewPlugin } from "@codemirror/view";
import { tags } from "@lezer/highlight";
import { Table, TaskList, parser } from "@lezer/markdown";

// The lines above a lesson are no Markdown: their last rule would make a heading of them.
const front = {
  defineNodes: [{ name: "FrontMatter", block: true }],
  parseBlock: [
    {
      name: "FrontMatter",
      before: "HorizontalRule",
      parse: (context, line) => {
        if (context.lineStart !== 0 || !isRule(line.text)) return false;
        while (context.nextLine() && !isRule(line.text));
        context.nextLine();
        context.addElement(context.elt("FrontMatter", 0, context.prevLineEnd()));
        return true;
      },
    },
  ],
};
const isRule = text => /^---\s*$/.test(text);

const markdown = new Language(defineLanguageFacet(), parser.configure([Table, TaskList, front]), [], "markdown");

const style = HighlightStyle.define([
  { tag: tags.heading, class: "w-heading" },
  { tag: tags.emphasis, class: "w-emphasis" },
  { tag: tags.strong, class: "w-strong" },
  { tag: [tags.link, tags.url], class: "w-link" },
  { tag: [tags.processingInstruction, tags.contentSeparator], class: "w-mark" },
  { tag: tags.monospace, class: "w-code" },
  { tag: tags.quote, class: "w-quote" },
]);

const fenceStart = /^\s*(?:>\s*)*(?:[-*+]\s+|\d+[.)]\s+)?(`{3,}|~{3,})\s*(\w*)/;
const option = /^(\s*(?:>\s*)*)([\p{L}][\w-]*)\s*:(?=\s|$)/u;

/// What each line is: { part: "frontmark" | "front" | "text" | "fence" | "sentence" | "option", kind: of a block, its first word }.
function linesOf(doc) {
  const lines = [];
  let isFront = isRule(doc.line(1).text);
  let fence = null;
  let hasOptions = false;
  for (let number = 1; number <= doc.lines; number++) {
    const text = doc.line(number).text;
    if (isFront) {
      lines.push({ part: isRule(text) ? "frontmark" : "front" });
      if (isRule(text) && number > 1) isFront = false;
    } else if (fence) {
      const isEnd = text.replace(/^[\s>]*/, "").startsWith(fence.mark) && /^[\s>]*[`~]+\s*$/.test(text);
      hasOptions ||= option.test(text);
      lines.push({ part: isEnd ? "fence" : hasOptions ? "option" : "sentence", kind: fence.kind });
      if (isEnd) fence = null;
    } else {
      const begin = fenceStart.exec(text);
      if (begin) {
        fence = { mark: begin[1], kind: begin[2] };
        hasOptions = false;
        lines.push({ part: "fence", kind: fence.kind });
      } else lines.push({ part: "text" });
    }
  }
  return lines;
}

export const lessonLines = StateField.define({
  create: state => linesOf(state.doc),
  update: (lines, change) => (change.docChanged ? linesOf(change.newDoc) : lines),
});

const kinds = new Set(["show", "claim", "play"]);
// Keys, chords, degrees, places, numbers: what a musician looks for in a sentence.
const words =
  /\b(?:[A-G](?:[#b]|-flat|-sharp)?(?:\s+(?:(?:natural|harmonic|melodic)\s+)?(?:major|minor|dorian|phrygian|lydian|mixolydian|locrian))|strings?\s+[\d\-, and]*\d|frets?\s+\d+(?:-\d+)?|(?:guitar|ukulele|bass|mandolin|banjo)s?|\d+(?:-\d+)?)\b/g;

const mark = name => Decoration.mark({ class: name });
const [keyMark, wordMark, kindMark] = [mark("w-key"), mark("w-word"), mark("w-kind")];

function marksOf(view) {
  const lines = view.state.field(lessonLines);
  const marks = [];
  for (const { from, to } of view.visibleRanges) {
    for (let at = from; at <= to; ) {
      const line = view.state.doc.lineAt(at);
      const { part, kind } = lines[line.number - 1] ?? { part: "text" };
      const isOurs = kinds.has(kind);
      if (part !== "text") {
        const name = part.startsWith("front") ? "w-front" : isOurs ? `w-block w-${kind}` : "w-block";
        marks.push(Decoration.line({ class: `${name} w-${part}` }).range(line.from));
      }
      if (part === "front" || part === "option") {
        const found = option.exec(line.text);
        if (found) {
          const begin = line.from + found[1].length;
          marks.push(keyMark.range(begin, begin + found[2].length + 1));
        }
      }
      if (part === "fence" && isOurs) {
        const begin = line.from + line.text.lastIndexOf(kind);
        if (line.text.includes(kind)) marks.push(kindMark.range(begin, begin + kind.length));
      }
      if (part === "sentence" && isOurs)
        for (const found of line.text.matchAll(words))
          marks.push(wordMark.range(line.from + found.index, line.from + found.index + found[0].length));
      at = line.to + 1;
    }
  }
  return Decoration.set(marks, true);
}

const marks = ViewPlugin.fromClass(
  class {
    constructor(view) {
      this.decorations = marksOf(view);
    }
    update(update) {
      if (update.docChanged || update.viewportChanged) this.decorations = marksOf(update.view);
    }
  },
  { decorations: plugin => plugin.decorations },
);

export const lesson = [markdown.extension, syntaxHighlighting(style), lessonLines, marks];
