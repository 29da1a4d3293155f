// What is lit while it sounds: noteheads and figures on the staff, on the neck the spot and the threads to what sounds with it or came before.
const chordSeconds = 0.08;

class Lights {
  constructor(root, staves, said) {
    [this.root, this.staves, this.said] = [root, staves, said];
    const parts = root.querySelectorAll(".exercise-neck [data-part^='light ']");
    this.neck = new Map([...parts].map(part => [part.dataset.part.slice(6), part]));
    this.coming = [];
    // How many lights a part has: the same spot may sound again before the first has ended.
    this.held = new Map();
  }

  add(light) {
    this.coming.push(light);
  }

  clear() {
    for (const part of this.held.keys()) part.classList.remove("lit");
    this.held.clear();
    this.coming = [];
    this.before = this.current = undefined;
  }

  look(now) {
    this.coming = this.coming.filter(one => {
      if (one.time <= now && !one.isOn) this.turnOn(one, now);
      if (one.end > now || !one.isOn) return true;
      one.parts?.forEach(part => this.release(part));
      return false;
    });
  }

  turnOn(one, now) {
    one.isOn = true;
    if (one.says) {
      this.said(one.says);
      return;
    }
    if (!this.current || one.time - this.current.begin > chordSeconds) {
      this.before = this.current;
      this.current = { begin: one.time, spots: [] };
    }
    const threads = [...this.current.spots, ...(this.before?.spots ?? [])].flatMap(spot => [
      this.neck.get(`${one.spot} ${spot}`),
      this.neck.get(`${spot} ${one.spot}`),
    ]);
    this.current.spots.push(one.spot);
    const heads = this.staves.querySelectorAll(`[data-note="${one.note}"]`);
    one.parts = new Set([this.neck.get(one.spot), ...threads, ...heads].filter(part => part));
    one.parts.forEach(part => this.hold(part));
    this.root.dispatchEvent(new CustomEvent("lit", { detail: { note: one.note, time: one.time, now } }));
  }

  hold(part) {
    this.held.set(part, (this.held.get(part) ?? 0) + 1);
    part.classList.add("lit");
  }

  release(part) {
    const left = this.held.get(part) - 1;
    if (left > 0) {
      this.held.set(part, left);
      return;
    }
    this.held.delete(part);
    part.classList.remove("lit");
  }
}
