// What is heard and seen each time round: when, in quarter notes from its beginning. Nothing here knows of sound or page.

const echoBars = 2;
const nearly = 1e-6;

// Once through the chosen bars, after a count-in where one is wanted. Without bars or beats there is nothing, of length 0.
function roundOf({ bar, beat, notes }, { first, last, who, clicks, countInBars }) {
  const events = [];
  if (!(bar > 0 && beat > 0 && last >= first)) return { events, length: 0 };
  const chosen = first === last ? `bar ${first}` : `bars ${first} to ${last}`;
  const clicksAlong = clicks || who === "click";
  let at = 0;
  const clickThrough = length => {
    for (let click = 0; click < length - nearly; click += beat) {
      const inBar = click % bar;
      events.push({ at: at + click, click: inBar < nearly || bar - inBar < nearly ? "first" : "other" });
    }
  };
  if (countInBars > 0) {
    events.push({ at, says: countInBars === 1 ? "Count-in." : `Count-in: ${countInBars} bars.` });
    clickThrough(countInBars * bar);
    at += countInBars * bar;
  }
  const step = who === "echo" ? echoBars : last - first + 1;
  for (let from = first; from <= last; from += step) {
    const [begin, end] = [(from - 1) * bar, Math.min(last, from + step - 1) * bar];
    events.push({ at, says: who === "click" ? `Now you: ${chosen}.` : `Playing ${chosen}.` });
    if (clicksAlong) clickThrough(end - begin);
    for (const [start, length, string, fret, midi, accent, note] of notes) {
      if (start < begin - nearly || start >= end - nearly) continue;
      const sounding = { length: Math.min(length, end - start), string, spot: `${string}-${fret}`, midi, accent, note };
      events.push({ at: at + start - begin, ...sounding, sounds: who !== "click" });
    }
    at += end - begin;
    if (who === "echo") {
      events.push({ at, says: "Now you." });
      if (clicksAlong) clickThrough(end - begin);
      at += end - begin;
    }
  }
  return { events: events.sort((one, other) => one.at - other.at), length: at };
}

// The next rung of a row of tempos from slow to fast; after the last it stays.
const nextTempo = (tempi, tempo) => tempi.find(one => one > tempo) ?? tempo;
