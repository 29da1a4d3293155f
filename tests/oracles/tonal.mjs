// Answers questions about music theory with the library tonal. Standard input is a JSON list of questions,
// standard output the list of answers in the same order; a question that tonal cannot answer gets an empty list.
//   ["chord", root, suffix]     the notes of a chord
//   ["scale", tonic, name]      the notes of a scale
//   ["above", note, interval]   the note an interval above, as a list of one
//   ["between", low, high]      the interval between two names, as a list of one
import { readFileSync } from 'node:fs';
import { Chord, ChordType, Interval, Note, Scale } from 'tonal';

const one = (text) => (text ? [text] : []);
const answers = {
  chord: (root, suffix) => (ChordType.get(suffix).empty ? [] : Chord.getChord(suffix, root).notes),
  scale: (tonic, name) => Scale.get(`${tonic} ${name}`).notes,
  above: (note, interval) => one(Note.transpose(note, interval)),
  between: (low, high) => one(Interval.distance(low, high)),
};

const questions = JSON.parse(readFileSync(0, 'utf8'));
process.stdout.write(JSON.stringify(questions.map(([kind, ...rest]) => answers[kind](...rest))));
