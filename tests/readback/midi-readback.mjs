// node midi-readback.mjs FILE.mid...
// Reads each file with a library that knows nothing of us: it has to be a whole format 1 file, every note ended before its key is
// struck again. With FILE.score.json beside it, every note is compared with the score as it is played: start, key, length.
// Exit code 1 when anything is wrong or when there is no file.
import { existsSync, readFileSync } from 'node:fs';
import { parseMidi } from 'midi-file';

const files = process.argv.slice(2);
let failed = 0;
let compared = 0;
for (const file of files) {
  const problems = [];
  try {
    const midi = parseMidi(readFileSync(file));
    const tracks = midi.tracks.map((track, i) => readTrack(track, i, problems));
    checkFile(midi, tracks, problems);
    const score = file.replace(/\.mid$/, '.score.json');
    if (existsSync(score)) compared += compare(tracks, midi.header.ticksPerBeat, JSON.parse(readFileSync(score, 'utf8')), problems);
  } catch (e) {
    problems.push(e.stack);
  }
  if (problems.length === 0) continue;
  failed++;
  console.error(`${file}: ${problems.length} problems\n${problems.slice(0, 12).map(p => `  ${p}`).join('\n')}`);
}
console.log(`${files.length} MIDI files read, ${compared} notes compared with their scores, ${failed} files differ`);
process.exit(failed > 0 || files.length === 0 ? 1 : 0);

function checkFile(midi, tracks, problems) {
  if (midi.header.format !== 1 || midi.header.numTracks !== midi.tracks.length) problems.push('no format 1 file with all its tracks');
  const first = midi.tracks[0] ?? [];
  for (const type of ['trackName', 'setTempo', 'timeSignature', 'keySignature']) {
    if (!first.some(e => e.type === type)) problems.push(`the first track has no ${type}`);
  }
  if (first.some(e => e.channel !== undefined)) problems.push('the first track sounds');
  if (new Set(tracks.map(t => t.end)).size !== 1) problems.push('the tracks end at different times');
}

// Notes with start, end and key, and the end of the track.
function readTrack(track, index, problems) {
  const notes = [];
  const sounding = new Map();
  let tick = 0;
  for (const event of track) {
    tick += event.deltaTime;
    const key = `${event.channel}.${event.noteNumber}`;
    if (event.type === 'noteOn') {
      if (sounding.has(key)) problems.push(`track ${index + 1}: key ${event.noteNumber} is struck at ${tick} while it sounds`);
      const note = { start: tick, end: null, key: event.noteNumber };
      sounding.set(key, note);
      notes.push(note);
    } else if (event.type === 'noteOff') {
      if (!sounding.has(key)) problems.push(`track ${index + 1}: key ${event.noteNumber} ends at ${tick} without a start`);
      else sounding.get(key).end = tick;
      sounding.delete(key);
    }
  }
  if (sounding.size > 0) problems.push(`track ${index + 1}: ${sounding.size} notes never end`);
  if (track.at(-1)?.type !== 'endOfTrack') problems.push(`track ${index + 1} has no end`);
  return { notes, end: tick };
}

// The second track is the part. A note may be cut short by its articulation, never drawn out beyond its bar.
function compare(tracks, ticksPerQuarter, score, problems) {
  const expected = new Map(playedNotes(score).map(n => [`${Math.round(n.start * ticksPerQuarter)} ${n.key}`, n]));
  for (const note of tracks[1].notes) {
    const name = `${note.start} ${note.key}`;
    const wanted = expected.get(name);
    if (!wanted) problems.push(`key ${note.key} at ${note.start} is not in the score`);
    else if (note.end <= note.start || note.end > Math.round(Math.max(wanted.end, wanted.barEnd) * ticksPerQuarter)) problems.push(`key ${note.key} at ${note.start} ends at ${note.end}`);
    expected.delete(name);
  }
  for (const missing of expected.keys()) problems.push(`missing: tick and key ${missing}`);
  return tracks[1].notes.length;
}

function playedNotes(score) {
  const first = score.measures[0];
  const [beats, unit] = first.meter.split('/').map(Number);
  const notes = [];
  let at = first.implicit ? beats * 4 / unit - quarters(first.length) : 0;
  let open = [];
  for (const index of score.playOrder) {
    const measure = score.measures[index];
    const end = at + quarters(measure.length);
    const tied = [];
    // Notes come voice by voice; a tie leads on within its voice, from the bar played before or within the bar.
    const leadsTo = (key, voice, onset) => [...open, ...tied].find(n => n.key === key && n.voice === voice && Math.abs(n.end - onset) < 1e-9);
    for (const written of measure.staves['1']) {
      if (written.rest || !written.pitch || (written.silent && written.head === 'slash')) continue;
      const key = 12 * (written.pitch.octave + 1) + { C: 0, D: 2, E: 4, F: 5, G: 7, A: 9, B: 11 }[written.pitch.step] + written.pitch.alter;
      const onset = at + quarters(written.onset);
      let note = written.tieStop ? leadsTo(key, written.voice, onset) : undefined;
      if (!note) notes.push(note = { start: onset, key, voice: written.voice, barEnd: end });
      note.end = onset + quarters(written.duration);
      if (written.tieStart) tied.push(note);
    }
    open = tied;
    at = end;
  }
  return notes;
}

function quarters([numerator, denominator]) {
  return numerator / denominator;
}
