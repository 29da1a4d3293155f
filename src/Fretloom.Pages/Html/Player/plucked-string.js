// One plucked string and the click, sample by sample. The method is that of Fretloom.Scores/Sound, and so are the figures, which the page hands over.
// A pluck goes round in a loop as long as the period (Karplus and Strong 1983), tuned by an allpass, and loses a little each time (Jaffe and Smith 1983).

// No string is heard for longer; what then still rings fades.
const longestSeconds = 4;
const fadeSeconds = 0.05;

const hzOf = midi => 440 * 2 ** ((midi - 69) / 12);
const fallIn = (t60, hz) => 10 ** (-3 / (hz * t60));

// The same noise each time for the same seed (mulberry32, public domain).
function noiseOf(seed) {
  return () => {
    seed = (seed + 0x6d2b79f5) | 0;
    let mixed = Math.imul(seed ^ (seed >>> 15), 1 | seed);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2147483648 - 1;
  };
}

function pluck(length, sound, rate, noise) {
  const loop = Float64Array.from({ length }, (_, at) =>
    ((at + 0.5) / length < sound.pluckedAt ? 1 : 0) + sound.roughness * noise());
  const mean = () => loop.reduce((sum, one) => sum + one, 0) / length;
  const soft = 1 - Math.exp((-2 * Math.PI * sound.softAboveHz) / rate);
  let first = mean();
  let second = first;
  // Twice round, so that the end runs into the beginning.
  for (let at = 0; at < 2 * length; at++) {
    first += soft * (loop[at % length] - first);
    second += soft * (first - second);
    if (at >= length) loop[at - length] = second;
  }
  const middle = mean();
  const power = loop.reduce((sum, one) => sum + (one - middle) ** 2, 0) / length;
  const scale = sound.loudness / Math.sqrt(power);
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

function samplesOf(midi, sound, rate) {
  const hz = hzOf(midi);
  const turn = (2 * Math.PI * hz) / rate;
  const t60 = sound.ringsSeconds * (sound.ringsAtHz / hz) ** sound.ringsPower;
  const keep = fallIn(t60, hz);
  const wanted = fallIn(sound.highSeconds, hz) / keep;
  const fall = (1 - wanted * wanted) / (1 - Math.cos((2 * Math.PI * sound.highHz) / rate));
  const blend = (1 - Math.sqrt(1 - 2 * Math.min(0.5, Math.max(0, fall)))) / 2;
  const [real, imaginary] = [1 - blend + blend * Math.cos(turn), blend * Math.sin(turn)];
  const keepRound = Math.min(sound.mostKept, keep / Math.hypot(real, imaginary));
  const period = rate / hz - Math.atan2(imaginary, real) / turn;
  const loop = pluck(Math.trunc(period - sound.leastDelay), sound, rate, noiseOf(midi));
  const left = period - loop.length;
  const allpass = Math.sin(((1 - left) * turn) / 2) / Math.sin(((1 + left) * turn) / 2);
  const body = sound.resonances.map(([middle, quality, gain]) => ({ gain, next: resonator(middle, quality, rate) }));
  const samples = new Float32Array(Math.round(Math.min(t60, longestSeconds) * rate));
  const fade = fadeSeconds * rate;
  let [at, before, into, out] = [0, 0, 0, 0];
  for (let frame = 0; frame < samples.length; frame++) {
    const sample = loop[at];
    const mean = (1 - blend) * sample + blend * before;
    before = sample;
    const tuned = allpass * (mean - out) + into;
    [into, out] = [mean, tuned];
    loop[at] = tuned * keepRound;
    at = at + 1 === loop.length ? 0 : at + 1;
    const attacked = sample * Math.min(1, (frame + 1) / (sound.attackSeconds * rate));
    let heard = sound.direct * attacked;
    for (const { gain, next } of body) heard += gain * next(attacked);
    samples[frame] = heard * Math.min(1, (samples.length - 1 - frame) / fade);
  }
  return samples;
}

function clickOf(isFirst, sound, rate) {
  const [hz, level] = isFirst ? sound.firstClick : sound.otherClick;
  return Float32Array.from({ length: Math.trunc(sound.clickSeconds * rate) }, (_, frame) =>
    level * Math.exp(-frame / rate / sound.clickFallSeconds) * Math.sin((2 * Math.PI * hz * frame) / rate));
}
