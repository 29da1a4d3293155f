// The finding that was gone to by a key is told beside its words, as it is when it is pointed at.
import { forEachDiagnostic } from "@codemirror/lint";
import { showTooltip } from "@codemirror/view";

const drawn = (view, { severity, message, actions = [] }, from, to) => {
  const dom = Object.assign(document.createElement("div"), { className: `cm-diagnostic cm-diagnostic-${severity}`, textContent: message });
  dom.setAttribute("role", "status");
  for (const { name, apply } of actions) {
    const button = Object.assign(document.createElement("button"), { type: "button", className: "cm-diagnosticAction", textContent: name });
    button.addEventListener("click", () => apply(view, from, to));
    dom.append(button);
  }
  return { dom };
};

export const finding = showTooltip.compute(["selection", "doc"], state => {
  const { from, to, empty } = state.selection.main;
  let found = null;
  if (!empty) forEachDiagnostic(state, (one, start, end) => (found ??= start === from && end === to ? one : null));
  return found && { pos: from, create: view => drawn(view, found, from, to) };
});
