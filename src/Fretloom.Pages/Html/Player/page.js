// The controls of each exercise, and what they do.
const players = [];

class Player {
  constructor(root) {
    this.root = root;
    this.data = JSON.parse(root.dataset.exercise);
    this.controls = root.querySelector(".player");
    this.button = this.control("hear");
    const staves = root.querySelector(".staves");
    this.controls.hidden = false;
    root.classList.add("can-play");
    this.output = new Output(this.data);
    this.lights = new Lights(root, staves, words => this.say(words));
    this.signs = new RepeatSigns(staves, this.data.bars, () => this.restart());
    this.transport = new Transport(this.data, this.output, {
      asked: () => this.asked(),
      due: (event, time, end) => this.due(event, time, end),
      faster: tempo => (this.control("tempo").value = tempo),
    });
    this.tempo = Number(this.control("tempo").value);
    this.listen();
  }

  control(name) {
    return this.controls.querySelector("." + name);
  }

  listen() {
    this.button.addEventListener("click", () => (this.isPlaying ? this.stop() : this.start()));
    this.control("tempo").addEventListener("change", event => this.setTempo(event.target));
    this.control("volume").addEventListener("input", () => this.setVolume());
    for (const name of ["who", "click"]) this.control(name).addEventListener("change", () => this.restart());
  }

  say(words) {
    this.control("now").textContent = words;
  }

  asked() {
    return {
      first: this.signs.first,
      last: this.signs.last,
      who: this.control("who").value,
      clicks: this.control("click").checked,
      countInBars: this.control("count").checked ? Math.max(1, this.data.countIn) : 0,
      climbs: this.control("faster")?.checked ?? false,
    };
  }

  start() {
    players.forEach(player => player.stop());
    this.isPlaying = true;
    this.button.textContent = "Stop";
    this.root.classList.add("is-playing");
    this.output.open();
    this.setVolume();
    this.callOff = this.output.prepare([...new Set(this.data.notes.map(note => note[4]))], () => this.run());
  }

  run() {
    this.transport.start(this.tempo);
    if (!this.transport.isRunning) {
      this.stop();
      return;
    }
    const look = () => {
      this.lights.look(this.output.heardNow);
      this.frame = requestAnimationFrame(look);
    };
    look();
  }

  stop() {
    if (!this.isPlaying) return;
    this.isPlaying = false;
    this.callOff();
    cancelAnimationFrame(this.frame);
    this.transport.stop();
    this.output.silence();
    this.lights.clear();
    this.button.textContent = "Hear it";
    this.root.classList.remove("is-playing");
    // A row of tempos begins anew.
    this.control("tempo").value = this.tempo;
    this.say("");
  }

  restart() {
    if (!this.transport.isRunning) return;
    this.output.silence();
    this.lights.clear();
    this.transport.restart();
  }

  setVolume() {
    this.output.setVolume(Number(this.control("volume").value) / 100);
  }

  setTempo(box) {
    const wanted = Math.round(Number(box.value)) || this.tempo;
    this.tempo = Math.min(Number(box.max), Math.max(Number(box.min), wanted));
    box.value = this.tempo;
    if (this.transport.isRunning) this.transport.setTempo(this.tempo);
  }

  due(event, time, end) {
    if (event.click) this.output.click(event.click === "first", time);
    else this.lights.add({ time, end, says: event.says, note: event.note, spot: event.spot });
    if (event.sounds) this.output.pluck(event, time, end);
  }
}

// The fonts of the page decide where things lie.
document.fonts.ready.then(() => {
  players.push(...[...document.querySelectorAll("[data-exercise]")].map(root => new Player(root)));
});
addEventListener("pagehide", () => players.forEach(player => player.stop()));
