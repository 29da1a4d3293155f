// The sound output of the page, made when something is first to be heard. Each sound is made once for all exercises.
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

// What one exercise sounds through.
class Output {
  constructor({ scale, strings, sound }) {
    [this.scale, this.strings, this.figures] = [scale, strings, sound];
    this.sources = new Set();
  }

  open() {
    context ??= new AudioContext();
    context.resume();
    if (this.gain) return;
    this.gain = context.createGain();
    // The compressor of the Web Audio API as it is by default (from -24 dB on, 12 to 1): many strings at once do not distort.
    this.gain.connect(context.createDynamicsCompressor()).connect(context.destination);
  }

  get now() {
    return context.currentTime;
  }

  // What is heard at this moment: the device takes a while.
  get heardNow() {
    return context.currentTime - (context.outputLatency || context.baseLatency || 0);
  }

  // A share from 0 to 1.
  setVolume(share) {
    this.gain?.gain.setTargetAtTime(share * share * 2, context.currentTime, 0.02);
  }

  // Makes every string before the first is heard, one at a time, so that the page answers meanwhile. Returns what calls it off.
  prepare(midis, then) {
    const missing = midis.filter(midi => !buffers.has(this.nameOf(midi)));
    let timer;
    const next = () => {
      if (missing.length === 0) return then();
      this.stringOf(missing.shift());
      timer = setTimeout(next, 0);
    };
    next();
    return () => clearTimeout(timer);
  }

  nameOf(midi) {
    return `${this.scale} ${midi}`;
  }

  stringOf(midi) {
    return bufferOf(this.nameOf(midi), rate => samplesOf(midi, this.figures, rate));
  }

  click(isFirst, time) {
    this.sound(bufferOf(isFirst ? "first click" : "click", rate => clickOf(isFirst, this.figures, rate)), time, 1, 0);
  }

  pluck({ midi, string, accent }, time, end) {
    const { accent: louder, spread } = this.figures;
    const pan = this.strings > 1 ? spread * (1 - (2 * (string - 1)) / (this.strings - 1)) : 0;
    this.sound(this.stringOf(midi), time, accent ? louder : 1, pan, end);
  }

  sound(buffer, time, level, pan, end) {
    const source = context.createBufferSource();
    const gain = context.createGain();
    const side = context.createStereoPanner();
    source.buffer = buffer;
    gain.gain.value = level;
    side.pan.value = pan;
    source.connect(gain).connect(side).connect(this.gain);
    source.start(time);
    if (end) {
      gain.gain.setTargetAtTime(0, end, 0.03);
      source.stop(end + 0.25);
    }
    const kept = { source, gain };
    this.sources.add(kept);
    source.addEventListener("ended", () => this.sources.delete(kept));
  }

  silence() {
    for (const { source, gain } of this.sources) {
      gain.gain.cancelScheduledValues(this.now);
      gain.gain.setTargetAtTime(0, this.now, 0.02);
      source.stop(this.now + 0.15);
    }
    this.sources.clear();
  }
}
