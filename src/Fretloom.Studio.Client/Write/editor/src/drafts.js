// What is written and not yet on the disk, kept in this browser by lesson and tab.
const prefix = "fretloom draft ";
// Drafts that nobody is writing any more, and those that are not to be offered again.
const aside = "aside-";
const declined = "fretloom declined ";
const random = () => Math.random().toString(36).slice(2);
const tab = random();
const own = name => `${prefix}${tab} ${name}`;
let complained = false;

// Held as long as the tab lives, so that others can tell its drafts from those that were left behind.
navigator.locks?.request(prefix + tab, () => new Promise(() => {})).catch(() => {});

// A browser may refuse its storage altogether.
function stored(what, otherwise) {
  try {
    return what(localStorage);
  } catch {
    return otherwise;
  }
}

// The locks of the tabs that live; null where the browser does not tell, as on a page without a secure connection.
async function living() {
  try {
    return (await navigator.locks.query()).held.map(lock => lock.name);
  } catch {
    return null;
  }
}

const read = (storage, key) => {
  try {
    return JSON.parse(storage.getItem(key));
  } catch {
    return null;
  }
};

/// Keeps a text at once. Answers whether the browser took it.
export function keep(name, etag, text) {
  const isKept = stored(storage => {
    storage.setItem(own(name), JSON.stringify({ etag, text, at: new Date().toISOString() }));
    return true;
  }, false);
  if (!isKept && !complained) {
    complained = true;
    dispatchEvent(new CustomEvent("fretloom-not-kept"));
  }
  return isKept;
}

/// Makes what this tab has kept of a lesson a draft that was left behind.
export const setAside = name =>
  stored(storage => {
    const text = storage.getItem(own(name));
    if (text === null) return;
    const key = `${prefix}${aside}${random()} ${name}`;
    try {
      storage.setItem(key, text);
      storage.removeItem(own(name));
    } catch {
      // There is no room for both at once.
      storage.removeItem(own(name));
      try {
        storage.setItem(key, text);
      } catch {
        storage.setItem(own(name), text);
      }
    }
  });

/// Forgets what this tab has kept of a lesson: it is on the disk.
export const drop = name => stored(storage => storage.removeItem(own(name)));

/// Forgets a draft that was left behind. Where nobody knows whether its tab lives, it stays and is not offered again.
export async function discard(key) {
  const isLeft = key.startsWith(prefix + aside) || (await living()) !== null;
  stored(storage => {
    if (isLeft) storage.removeItem(key);
    else storage.setItem(declined + key, read(storage, key)?.at ?? "");
  });
}

// What is kept that no other living tab is writing, and that was not declined.
async function found() {
  const held = (await living()) ?? [];
  return stored(storage => {
    const drafts = [];
    for (let at = 0; at < storage.length; at++) {
      const key = storage.key(at);
      if (!key.startsWith(prefix)) continue;
      const [owner, ...rest] = key.slice(prefix.length).split(" ");
      if (owner !== tab && held.includes(prefix + owner)) continue;
      const draft = read(storage, key);
      if (draft && storage.getItem(declined + key) !== draft.at) drafts.push({ key, owner, name: rest.join(" "), ...draft });
    }
    return drafts;
  }, []);
}

/// The lessons of which something is kept that no other tab is writing.
export const names = async () => [...new Set((await found()).map(draft => draft.name))];

/// The drafts of a lesson that no living tab is writing, the newest first, as JSON.
export async function leftBehind(name) {
  const drafts = (await found()).filter(draft => draft.name === name && draft.owner !== tab);
  return JSON.stringify(drafts.sort((one, other) => (one.at < other.at ? 1 : -1)));
}
