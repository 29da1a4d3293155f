// Plucked strings for what is pointed at, made as the players of handouts make them. Nothing sounds before it is asked for, and it starts quiet.
const volume = 0.32;
const longestSeconds = 4;
const made = new Map();
let context;
let out;

function open() {
  if (context) return context.resume();
  context = new AudioContext();
  out = context.createGain();
  out.gain.value = volume;
  // The compressor of the Web Audio API as it is by default: many strings at once do not distort.
  out.connect(context.createDynamicsCompressor()).connect(context.destination);
}

// The figures tell one instrument's sound from another's.
function bufferOf(figures, midi) {
  const name = figures + midi;
  if (!made.has(name)) {
    const samples = samplesOf(midi, JSON.parse(figures), context.sampleRate);
    const buffer = context.createBuffer(1, samples.length, context.sampleRate);
    buffer.copyToChannel(samples, 0);
    made.set(name, buffer);
  }
  return made.get(name);
}

export function pluck(figures, midis, gapSeconds) {
  open();
  const buffers = midis.map(midi => bufferOf(figures, midi));
  const now = context.currentTime + 0.02;
  buffers.forEach((buffer, at) => {
    const source = context.createBufferSource();
    source.buffer = buffer;
    source.connect(out);
    source.start(now + at * gapSeconds);
    source.stop(now + at * gapSeconds + longestSeconds);
  });
}
