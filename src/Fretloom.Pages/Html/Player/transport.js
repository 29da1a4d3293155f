// Goes round the chosen bars at a tempo, and hands over what comes next a moment before it is due.
const aheadSeconds = 0.2;
const startSeconds = 0.12;
const lateSeconds = 0.05;

class Transport {
  // `asked` tells what is to be played, `due` is given each event with the times of its beginning and end, `faster` a new tempo.
  constructor(data, output, { asked, due, faster }) {
    Object.assign(this, { data, output, asked, due, faster });
  }

  get isRunning() {
    return this.round !== undefined;
  }

  start(tempo) {
    this.tempo = tempo;
    this.begin(this.asked().countInBars);
    if (this.isRunning) this.timer = setInterval(() => this.schedule(), 25);
  }

  stop() {
    clearInterval(this.timer);
    this.round = undefined;
  }

  // From the beginning, without the count-in.
  restart() {
    this.begin(0);
  }

  begin(countInBars) {
    this.anchor = { time: this.output.now + startSeconds, at: 0 };
    this.handedOver = 0;
    this.goRound(countInBars);
    this.schedule();
  }

  goRound(countInBars) {
    this.round = roundOf(this.data, { ...this.asked(), countInBars });
    this.next = 0;
    // Nothing would go round for ever without any time passing.
    if (!(this.round.length > 0 && this.quarterSeconds > 0)) this.stop();
  }

  get quarterSeconds() {
    return 60 / (this.tempo * this.data.beat);
  }

  // What was already handed over stays; the rest follows at the new tempo.
  setTempo(tempo) {
    const time = Math.max(this.handedOver, this.output.now);
    this.anchor = { time, at: this.anchor.at + (time - this.anchor.time) / this.quarterSeconds };
    this.tempo = tempo;
  }

  timeOf(at) {
    return this.anchor.time + (at - this.anchor.at) * this.quarterSeconds;
  }

  schedule() {
    while (this.isRunning) {
      const event = this.round.events[this.next];
      const time = this.timeOf(event ? event.at : this.round.length);
      if (time > this.output.now + aheadSeconds) return;
      if (time < this.output.now - lateSeconds) {
        // The page was held up: go on from now instead of catching up.
        this.anchor.time += this.output.now - time;
      } else if (event) {
        this.next++;
        this.handedOver = time;
        this.due(event, time, time + (event.length ?? 0) * this.quarterSeconds);
      } else {
        this.anchor = { time, at: 0 };
        if (this.asked().climbs) this.climb();
        this.goRound(0);
      }
    }
  }

  climb() {
    const tempo = nextTempo(this.data.tempi, this.tempo);
    if (tempo === this.tempo) return;
    this.tempo = tempo;
    this.faster(tempo);
  }
}
