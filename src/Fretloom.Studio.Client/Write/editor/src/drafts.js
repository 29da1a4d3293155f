// What is written and not yet on the disk, kept in this browser by lesson and tab.
const prefix = "fretloom draft ";
const tab = Math.random().toString(36).slice(2);
let complained = false;

// Held as long as the tab lives, so that others can tell its drafts from those that were left behind.
navigator.locks?.request(prefix + tab, () => new Promise(() => {}));

/// Keeps a text at once. Answers whether the browser took it.
export function keep(name, etag, text) {
  try {
    localStorage.setItem(`${prefix}${tab} ${name}`, JSON.stringify({ etag, text, at: new Date().toISOString() }));
    return true;
  } catch {
    if (!complained) dispatchEvent(new CustomEvent("fretloom-not-kept"));
    complained = true;
    return false;
  }
}

/// Forgets what this tab has kept of a lesson: it is on the disk.
export const drop = name => localStorage.removeItem(`${prefix}${tab} ${name}`);

/// Forgets a draft that was left behind.
export const discard = key => localStorage.removeItem(key);

/// The drafts of a lesson that no other living tab is writing, the newest first, as JSON.
export async function leftBehind(name) {
  const held = (await navigator.locks?.query())?.held.map(lock => lock.name) ?? [prefix + tab];
  const found = [];
  for (let at = 0; at < localStorage.length; at++) {
    const key = localStorage.key(at);
    if (!key.startsWith(prefix)) continue;
    const [owner, ...rest] = key.slice(prefix.length).split(" ");
    if (rest.join(" ") !== name || (owner !== tab && held.includes(prefix + owner))) continue;
    try {
      found.push({ key, ...JSON.parse(localStorage.getItem(key)) });
    } catch {
      // Not ours.
    }
  }
  return JSON.stringify(found.sort((one, other) => (one.at < other.at ? 1 : -1)));
}
