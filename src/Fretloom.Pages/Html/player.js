(() => {
  "use strict";

  // One plucked string (Karplus and Strong 1983, with the changes of Jaffe and Smith 1983): the same method and figures as in
  // Fretloom.Scores/Sound. A pluck goes round in a loop as long as the period, tuned by an allpass, and loses a little each time.
  const loudness = 0.12;
  const longestSeconds = 4;
  const fallIn = (t60, hz) => 10 ** (-3 / (hz * t60));
  const hzOf = midi => 440 * 2 ** ((midi - 69) / 12);

  function voiceOf(scaleMm) {
    const size = scaleMm / 648;
    return { rings: 5 * Math.min(1.5, size), softAbove: 2600, roughness: 0.25, pluckedAt: 0.17, bodyHz: 100 / size };
  }

  // The same noise each time for the same pitch (mulberry32, public domain).
  function noiseOf(seed) {
    return () => {
      seed = (seed + 0x6d2b79f5) | 0;
      let mixed = Math.imul(seed ^ (seed >>> 15), 1 | seed);
      mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
      return ((mixed ^ (mixed >>> 14)) >>> 0) / 2147483648 - 1;
    };
  }

  function pluck(length, voice, rate, noise) {
    const loop = Float64Array.from({ length }, (_, at) =>
      ((at + 0.5) / length < voice.pluckedAt ? 1 : 0) + voice.roughness * noise());
    const mean = () => loop.reduce((sum, one) => sum + one, 0) / length;
    const soft = 1 - Math.exp((-2 * Math.PI * voice.softAbove) / rate);
    let first = mean();
    let second = first;
    const raw = loop.slice();
    for (let at = 0; at < 2 * length; at++) {
      first += soft * (raw[at % length] - first);
      second += soft * (first - second);
      if (at >= length) loop[at - length] = second;
    }
    const middle = mean();
    const power = loop.reduce((sum, one) => sum + (one - middle) ** 2, 0) / length;
    const scale = loudness / Math.sqrt(power);
    return loop.map(one => (one - middle) * scale);
  }

  function resonator(hz, quality, rate) {
    const turn = (2 * Math.PI * hz) / rate;
    const width = Math.sin(turn) / (2 * quality);
    const [b0, a1, a2] = [width / (1 + width), (-2 * Math.cos(turn)) / (1 + width), (1 - width) / (1 + width)];
    let [x1, x2, y1, y2] = [0, 0, 0, 0];
    return x => {
      const y = b0 * (x - x2) - a1 * y1 - a2 * y2;
      [x2, x1, y2, y1] = [x1, x, y1, y];
      return y;
    };
  }

  function samplesOf(midi, voice, rate) {
    const hz = hzOf(midi);
    const turn = (2 * Math.PI * hz) / rate;
    const t60 = voice.rings * (82.41 / hz) ** 0.4;
    const keep = fallIn(t60, hz);
    const wanted = fallIn(0.9, hz) / keep;
    const fall = (1 - wanted * wanted) / (1 - Math.cos((2 * Math.PI * 3000) / rate));
    const blend = (1 - Math.sqrt(1 - 2 * Math.min(0.5, Math.max(0, fall)))) / 2;
    const [real, imaginary] = [1 - blend + blend * Math.cos(turn), blend * Math.sin(turn)];
    const keepRound = Math.min(0.99999, keep / Math.hypot(real, imaginary));
    const period = rate / hz - Math.atan2(imaginary, real) / turn;
    const loop = pluck(Math.trunc(period - 0.3), voice, rate, noiseOf(midi));
    const left = period - loop.length;
    const allpass = Math.sin(((1 - left) * turn) / 2) / Math.sin(((1 + left) * turn) / 2);
    const air = resonator(voice.bodyHz, 6, rate);
    const top = resonator(voice.bodyHz * 1.9, 8, rate);
    const back = resonator(voice.bodyHz * 3.8, 6, rate);
    const samples = new Float32Array(Math.round(Math.min(t60, longestSeconds) * rate));
    let [at, before, into, out] = [0, 0, 0, 0];
    for (let frame = 0; frame < samples.length; frame++) {
      const sample = loop[at];
      const mean = (1 - blend) * sample + blend * before;
      before = sample;
      const tuned = allpass * (mean - out) + into;
      [into, out] = [mean, tuned];
      loop[at] = tuned * keepRound;
      at = at + 1 === loop.length ? 0 : at + 1;
      const attacked = sample * Math.min(1, frame / (0.001 * rate));
      samples[frame] = 0.75 * attacked + 0.6 * air(attacked) + 0.5 * top(attacked) + 0.3 * back(attacked);
    }
    return samples;
  }

  function clickOf(isFirst, rate) {
    const [hz, level] = isFirst ? [1600, 0.15] : [1100, 0.11];
    return Float32Array.from({ length: Math.round(0.03 * rate) }, (_, frame) =>
      level * Math.exp(-frame / rate / 0.006) * Math.sin((2 * Math.PI * hz * frame) / rate));
  }

  // One sound output for the page, made when something is first to be heard. Each sound is made once.
  let context;
  const buffers = new Map();
  function bufferOf(name, make) {
    if (!buffers.has(name)) {
      const samples = make(context.sampleRate);
      const buffer = context.createBuffer(1, samples.length, context.sampleRate);
      buffer.copyToChannel(samples, 0);
      buffers.set(name, buffer);
    }
    return buffers.get(name);
  }

  const aheadSeconds = 0.2;
  const echoBars = 2;
  const players = [];

  class Player {
    constructor(root) {
      this.root = root;
      this.data = JSON.parse(root.dataset.exercise);
      this.voice = voiceOf(this.data.scale);
      this.staves = root.querySelector(".staves");
      this.controls = root.querySelector(".player");
      this.first = 1;
      this.last = this.data.bars;
      this.lights = [];
      this.sources = new Set();
      const parts = root.querySelectorAll(".exercise-neck [data-part^='light ']");
      this.neck = new Map([...parts].map(part => [part.dataset.part.slice(6), part]));
      this.button = this.control("hear");
      this.tempo = Number(this.control("tempo").value);
      this.listen();
      this.controls.hidden = false;
      root.classList.add("can-play");
      this.signs = [this.sign("first", "Repeat from"), this.sign("last", "Repeat to")];
      new ResizeObserver(() => this.place()).observe(this.staves);
      this.place();
    }

    control(name) {
      return this.controls.querySelector("." + name);
    }

    listen() {
      this.button.addEventListener("click", () => (this.isPlaying ? this.stop() : this.start()));
      this.control("tempo").addEventListener("change", event => {
        const box = event.target;
        const wanted = Math.round(Number(box.value)) || this.tempo;
        box.value = Math.min(Number(box.max), Math.max(Number(box.min), wanted));
        this.setTempo(Number(box.value));
      });
      this.control("volume").addEventListener("input", () => this.setVolume());
      for (const name of ["who", "click"]) this.control(name).addEventListener("change", () => this.restart());
    }

    say(words) {
      this.control("now").textContent = words;
    }

    barsInWords() {
      return this.first === this.last ? `bar ${this.first}` : `bars ${this.first} to ${this.last}`;
    }

    // Sound.

    start() {
      players.forEach(player => player.stop());
      context ??= new AudioContext();
      context.resume();
      if (!this.output) {
        this.output = context.createGain();
        const softener = context.createDynamicsCompressor();
        this.output.connect(softener).connect(context.destination);
      }
      this.setVolume();
      this.isPlaying = true;
      this.rung = 0;
      this.button.textContent = "Stop";
      this.prepare(() => this.run());
    }

    // Makes every sound before the first is heard, one at a time, so that the page answers meanwhile.
    prepare(then) {
      const missing = this.data.notes.map(note => note[4]).find(midi => !buffers.has(this.nameOf(midi)));
      if (!this.isPlaying) return;
      if (missing === undefined) {
        then();
        return;
      }
      this.bufferOf(missing);
      this.timer = setTimeout(() => this.prepare(then), 0);
    }

    nameOf(midi) {
      return `${this.data.scale} ${midi}`;
    }

    bufferOf(midi) {
      return bufferOf(this.nameOf(midi), rate => samplesOf(midi, this.voice, rate));
    }

    run() {
      this.begin(this.control("count").checked);
      this.timer = setInterval(() => this.schedule(), 25);
      this.frame = requestAnimationFrame(() => this.light());
    }

    stop() {
      if (!this.isPlaying) return;
      this.isPlaying = false;
      clearInterval(this.timer);
      cancelAnimationFrame(this.frame);
      this.silence();
      this.round = undefined;
      this.button.textContent = "Hear it";
      this.say("");
    }

    restart() {
      if (!this.isPlaying || !this.round) return;
      this.silence();
      this.begin(false);
    }

    begin(countsIn) {
      this.anchor = { time: context.currentTime + 0.12, at: 0 };
      this.round = this.roundOf(countsIn);
      this.next = 0;
      this.schedule();
    }

    silence() {
      const now = context.currentTime;
      for (const { source, gain } of this.sources) {
        gain.gain.cancelScheduledValues(now);
        gain.gain.setTargetAtTime(0, now, 0.02);
        source.stop(now + 0.15);
      }
      this.sources.clear();
      this.lights.forEach(one => one.parts?.forEach(part => part.classList.remove("lit")));
      this.lights = [];
      this.before = this.current = undefined;
    }

    setVolume() {
      const share = Number(this.control("volume").value) / 100;
      this.output?.gain.setTargetAtTime(share * share * 2, context.currentTime, 0.02);
    }

    get quarterSeconds() {
      return 60 / (this.tempo * this.data.beat);
    }

    // What was already handed over stays; the rest follows at the new tempo.
    setTempo(tempo) {
      if (this.round) {
        const time = Math.max(this.handedOver ?? 0, context.currentTime);
        this.anchor = { time, at: this.anchor.at + (time - this.anchor.time) / this.quarterSeconds };
      }
      this.tempo = tempo;
    }

    // Once through the chosen bars: what happens when, in quarter notes from its beginning.
    roundOf(countsIn) {
      const { bar, beat, notes } = this.data;
      const who = this.control("who").value;
      const clicks = this.control("click").checked || who === "click";
      const events = [];
      let at = 0;
      const clickThrough = length => {
        for (let click = 0; click < length - 1e-6; click += beat) {
          events.push({ at: at + click, click: Math.abs(click % bar) < 1e-6 ? "first" : "other" });
        }
      };
      if (countsIn) {
        events.push({ at, says: "Count-in." });
        clickThrough(bar);
        at += bar;
      }
      const step = who === "echo" ? echoBars : this.last - this.first + 1;
      for (let from = this.first; from <= this.last; from += step) {
        const to = Math.min(this.last, from + step - 1);
        const [begin, end] = [(from - 1) * bar, to * bar];
        events.push({ at, says: who === "click" ? `Now you: ${this.barsInWords()}.` : `Playing ${this.barsInWords()}.` });
        if (clicks) clickThrough(end - begin);
        for (const [start, length, string, fret, midi, accent, note] of notes) {
          if (start < begin - 1e-6 || start >= end - 1e-6) continue;
          const sounds = who !== "click";
          events.push({ at: at + start - begin, length: Math.min(length, end - start), spot: `${string}-${fret}`, string, midi, accent, note, sounds });
        }
        at += end - begin;
        if (who === "echo") {
          events.push({ at, says: "Now you." });
          if (clicks) clickThrough(end - begin);
          at += end - begin;
        }
      }
      return { events: events.sort((one, other) => one.at - other.at), length: at };
    }

    timeOf(at) {
      return this.anchor.time + (at - this.anchor.at) * this.quarterSeconds;
    }

    schedule() {
      const horizon = context.currentTime + aheadSeconds;
      for (;;) {
        const event = this.round.events[this.next];
        const time = this.timeOf(event ? event.at : this.round.length);
        if (time > horizon) return;
        if (time < context.currentTime - 0.05) {
          // The page was held up: go on from now instead of catching up.
          this.anchor.time += context.currentTime - time;
          continue;
        }
        if (event) {
          this.next++;
          this.play(event, time);
          this.handedOver = time;
        } else {
          this.anchor = { time, at: 0 };
          if (this.control("faster")?.checked) this.climb();
          this.round = this.roundOf(false);
          this.next = 0;
        }
      }
    }

    // Each time round a rung higher, up to the last.
    climb() {
      this.rung = Math.min(this.rung + 1, this.data.tempi.length - 1);
      const tempo = this.data.tempi[this.rung];
      if (tempo <= this.tempo) return;
      this.tempo = tempo;
      this.control("tempo").value = tempo;
    }

    play(event, time) {
      if (event.says) {
        this.lights.push({ time, end: time, says: event.says });
      } else if (event.click) {
        this.sound(bufferOf("click " + event.click, rate => clickOf(event.click === "first", rate)), time, 1, 0);
      } else {
        const end = time + event.length * this.quarterSeconds;
        if (event.sounds) {
          const { strings } = this.data;
          const pan = strings > 1 ? 0.35 * (1 - (2 * (event.string - 1)) / (strings - 1)) : 0;
          this.sound(this.bufferOf(event.midi), time, event.accent ? 1.15 : 1, pan, end);
        }
        this.lights.push({ time, end, note: event.note, spot: event.spot });
      }
    }

    sound(buffer, time, level, pan, end) {
      const source = context.createBufferSource();
      const gain = context.createGain();
      const side = context.createStereoPanner();
      source.buffer = buffer;
      gain.gain.value = level;
      side.pan.value = pan;
      source.connect(gain).connect(side).connect(this.output);
      source.start(time);
      if (end) {
        gain.gain.setTargetAtTime(0, end, 0.03);
        source.stop(end + 0.25);
      }
      const kept = { source, gain };
      this.sources.add(kept);
      source.addEventListener("ended", () => this.sources.delete(kept));
    }

    // Light follows the clock of the sound, less what the output takes.
    light() {
      const now = context.currentTime - (context.outputLatency || context.baseLatency || 0);
      this.lights = this.lights.filter(one => {
        if (one.time <= now && !one.isOn) this.lightUp(one);
        if (one.end > now || !one.isOn) return true;
        one.parts?.forEach(part => part.classList.remove("lit"));
        return false;
      });
      this.frame = requestAnimationFrame(() => this.light());
    }

    lightUp(one) {
      one.isOn = true;
      if (one.says) {
        this.say(one.says);
        return;
      }
      if (!this.current || one.time - this.current.begin > 0.08) {
        this.before = this.current;
        this.current = { begin: one.time, spots: [] };
      }
      const threads = [...this.current.spots, ...(this.before?.spots ?? [])].flatMap(spot => [
        this.neck.get(`${one.spot} ${spot}`),
        this.neck.get(`${spot} ${one.spot}`),
      ]);
      this.current.spots.push(one.spot);
      const heads = this.staves.querySelectorAll(`[data-note="${one.note}"]`);
      one.parts = [this.neck.get(one.spot), ...threads, ...heads].filter(part => part);
      one.parts.forEach(part => part.classList.add("lit"));
      const detail = { note: one.note, time: one.time, now: context.currentTime };
      this.root.dispatchEvent(new CustomEvent("lit", { detail }));
    }

    // The repeat signs.

    sign(which, words) {
      const sign = document.createElement("div");
      sign.className = `sign ${which}`;
      sign.tabIndex = 0;
      sign.setAttribute("role", "slider");
      sign.setAttribute("aria-label", words);
      sign.addEventListener("keydown", event => {
        const steps = { ArrowLeft: -1, ArrowDown: -1, ArrowRight: 1, ArrowUp: 1, PageDown: -4, PageUp: 4, Home: -Infinity, End: Infinity };
        if (!(event.key in steps)) return;
        event.preventDefault();
        this.move(which, this[which] + steps[event.key]);
      });
      sign.addEventListener("pointerdown", event => {
        event.preventDefault();
        sign.focus();
        sign.setPointerCapture(event.pointerId);
      });
      sign.addEventListener("pointermove", event => {
        if (sign.hasPointerCapture(event.pointerId)) this.move(which, this.nearestTo(which, event.clientX, event.clientY));
      });
      this.staves.append(sign);
      return sign;
    }

    move(which, bar) {
      const [least, most] = which === "first" ? [1, this.last] : [this.first, this.data.bars];
      bar = Math.min(most, Math.max(least, bar));
      if (bar === this[which]) return;
      this[which] = bar;
      this.place();
      this.restart();
    }

    nearestTo(which, x, y) {
      const far = bar => {
        const box = this.boxOf(bar);
        if (!box) return Infinity;
        const above = Math.max(0, box.top - y, y - box.bottom);
        return 4 * above + Math.abs(x - (which === "first" ? box.left : box.right));
      };
      const bars = Array.from({ length: this.data.bars }, (_, at) => at + 1);
      return bars.reduce((best, bar) => (far(bar) < far(best) ? bar : best));
    }

    // Where a bar lies in the window: from its staff lines, where there are some.
    boxOf(bar) {
      const part = [...this.staves.querySelectorAll(`[data-bar="${bar}"]`)].find(one => one.getClientRects().length > 0);
      if (!part) return undefined;
      const lines = [...part.querySelectorAll(".staff > path")];
      const boxes = (lines.length > 0 ? lines : [part]).map(one => one.getBoundingClientRect());
      const box = {
        left: Math.min(...boxes.map(one => one.left)),
        right: Math.max(...boxes.map(one => one.right)),
        top: Math.min(...boxes.map(one => one.top)),
        bottom: Math.max(...boxes.map(one => one.bottom)),
        system: part.closest("div.system"),
      };
      const edges = (names, side) => [...part.querySelectorAll(names)].map(one => one.getBoundingClientRect()[side]);
      const signs = edges(".clef, .keySig, .meterSig", "right");
      const heads = edges("[data-note]", "left");
      // Where a system begins, midway between its clef and signs and the first note.
      if (signs.length > 0 && heads.length > 0) box.left = (Math.max(...signs) + Math.min(...heads)) / 2;
      return box;
    }

    place() {
      const host = this.staves.getBoundingClientRect();
      for (const [at, which] of ["first", "last"].entries()) {
        const [sign, bar] = [this.signs[at], this[which]];
        const [least, most] = which === "first" ? [1, this.last] : [this.first, this.data.bars];
        sign.setAttribute("aria-valuemin", least);
        sign.setAttribute("aria-valuemax", most);
        sign.setAttribute("aria-valuenow", bar);
        sign.setAttribute("aria-valuetext", `bar ${bar}`);
        sign.dataset.shows = bar;
        const box = this.boxOf(bar);
        sign.hidden = !box;
        if (!box) continue;
        sign.style.left = `${(which === "first" ? box.left : box.right) - host.left}px`;
        sign.style.top = `${box.top - host.top}px`;
        sign.style.height = `${box.bottom - box.top}px`;
      }
      this.tint(host);
    }

    // A tint behind the chosen bars, where they are not all of them.
    tint(host) {
      this.staves.querySelectorAll(".chosen").forEach(one => one.remove());
      if (this.first === 1 && this.last === this.data.bars) return;
      const rows = [];
      for (let bar = this.first; bar <= this.last; bar++) {
        const box = this.boxOf(bar);
        if (!box) continue;
        const row = rows.at(-1);
        if (row && row.system === box.system && Math.abs(row.top - box.top) < 2) row.right = box.right;
        else rows.push({ ...box });
      }
      for (const row of rows) {
        const tint = document.createElement("div");
        tint.className = "chosen";
        tint.style.left = `${row.left - host.left}px`;
        tint.style.top = `${row.top - host.top - 6}px`;
        tint.style.width = `${row.right - row.left}px`;
        tint.style.height = `${row.bottom - row.top + 12}px`;
        this.staves.prepend(tint);
      }
    }
  }

  // The fonts of the page decide where things lie.
  document.fonts.ready.then(() => {
    players.push(...[...document.querySelectorAll("[data-exercise]")].map(root => new Player(root)));
  });
  addEventListener("pagehide", () => players.forEach(player => player.stop()));
})();
