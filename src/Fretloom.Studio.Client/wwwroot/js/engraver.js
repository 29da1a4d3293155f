// Staves for the handout beside the editor. The engraver works in a thread of its own, so that it never holds the page up; it is fetched when a
// lesson first has an exercise. One that hangs or crashes is ended, and another takes its place.
const worker = new URL("engraver-worker.js", import.meta.url);
const library = "assets/verovio/verovio-toolkit-wasm.js";
// Milliseconds. The first includes the way to the host.
const longestStart = 60_000;
const longestWork = 10_000;
// How often one score is tried, and how often the engraver may end in a row. Ours, without source.
const mostTries = 2;
const mostEnds = 6;

let running;
let ends = 0;
let last = Promise.resolve();

// Answers in JSON: { pages } of a score, or { error } that is wrong with it, or { trouble: "missing" | "stopped" } when nothing is engraved any more.
export function engrave(score, options) {
  const answer = last.then(() => answerTo({ score, options: JSON.parse(options) }));
  last = answer;
  return answer.then(JSON.stringify);
}

// After trouble: begins anew.
export const again = () => (ends = 0);

async function answerTo(question) {
  for (let tries = 1; ; tries++) {
    if (ends >= mostEnds) return { trouble: "stopped" };
    try {
      running ??= await begin();
    } catch {
      return { trouble: "missing" };
    }
    const answer = await ask(question).catch(problem => ({ crash: String(problem) }));
    if (answer.crash === undefined) {
      ends = 0;
      return answer;
    }
    running.terminate();
    running = undefined;
    ends++;
    if (tries === mostTries) return { error: answer.crash };
  }
}

async function begin() {
  const fresh = new Worker(worker);
  try {
    await heard(fresh, longestStart);
  } catch (problem) {
    fresh.terminate();
    throw problem;
  }
  // The page may be older than its service worker, which keeps the file for times without a host.
  navigator.serviceWorker?.ready.then(({ active }) => active.postMessage({ keep: library }));
  return fresh;
}

function ask(question) {
  const answer = heard(running, longestWork);
  running.postMessage(question);
  return answer;
}

// The next message of a worker.
function heard(one, longest) {
  return new Promise((resolve, reject) => {
    const late = setTimeout(() => reject("it gave no answer"), longest);
    const end = done => event => {
      clearTimeout(late);
      done(event);
    };
    one.onmessage = end(event => (event.data.missing ? reject(event.data.missing) : resolve(event.data)));
    one.onerror = end(event => {
      event.preventDefault();
      reject(event.message || "it stopped");
    });
  });
}
