// Compares what a reader found in a MusicXML file with what the score says, note by note.

// Degrees of the standard's kinds, in half steps above the root (MusicXML 4.0, type kind-value). An 11th in a 13th chord is optional,
// as players leave it out.
const KINDS = {
  major: { 3: 4, 5: 7 },
  minor: { 3: 3, 5: 7 },
  augmented: { 3: 4, 5: 8 },
  diminished: { 3: 3, 5: 6 },
  dominant: { 3: 4, 5: 7, 7: 10 },
  'major-seventh': { 3: 4, 5: 7, 7: 11 },
  'minor-seventh': { 3: 3, 5: 7, 7: 10 },
  'diminished-seventh': { 3: 3, 5: 6, 7: 9 },
  'augmented-seventh': { 3: 4, 5: 8, 7: 10 },
  'half-diminished': { 3: 3, 5: 6, 7: 10 },
  'major-minor': { 3: 3, 5: 7, 7: 11 },
  'major-sixth': { 3: 4, 5: 7, 6: 9 },
  'minor-sixth': { 3: 3, 5: 7, 6: 9 },
  'dominant-ninth': { 3: 4, 5: 7, 7: 10, 9: 14 },
  'major-ninth': { 3: 4, 5: 7, 7: 11, 9: 14 },
  'minor-ninth': { 3: 3, 5: 7, 7: 10, 9: 14 },
  'dominant-11th': { 3: 4, 5: 7, 7: 10, 9: 14, 11: 17 },
  'major-11th': { 3: 4, 5: 7, 7: 11, 9: 14, 11: 17 },
  'minor-11th': { 3: 3, 5: 7, 7: 10, 9: 14, 11: 17 },
  'dominant-13th': { 3: 4, 5: 7, 7: 10, 9: 14, 11: 17, 13: 21 },
  'major-13th': { 3: 4, 5: 7, 7: 11, 9: 14, 11: 17, 13: 21 },
  'minor-13th': { 3: 3, 5: 7, 7: 10, 9: 14, 11: 17, 13: 21 },
  'suspended-second': { 2: 2, 5: 7 },
  'suspended-fourth': { 4: 5, 5: 7 },
  power: { 5: 7 },
};

// What a degree element adds is measured against a dominant chord.
const ADDED = { 2: 2, 3: 4, 4: 5, 5: 7, 6: 9, 7: 10, 9: 14, 11: 17, 13: 21 };
const STEPS = { C: 0, D: 2, E: 4, F: 5, G: 7, A: 9, B: 11 };

// Half steps that a natural harmonic sounds above its open string, by the fret touched: the partials of a string.
const HARMONICS = { 12: 12, 7: 19, 19: 19, 5: 24, 24: 24, 9: 28, 4: 28, 16: 28 };

export function midi({ step, alter, octave }) {
  return 12 * (octave + 1) + STEPS[step] + alter;
}

export function compare(read, dump) {
  const problems = [...read.problems];
  const say = text => problems.push(text);
  same(say, 'title', read.title, dump.title);
  same(say, 'number of measures', read.measures.length, dump.measures.length);
  for (let m = 0; m < Math.min(read.measures.length, dump.measures.length); m++) compareMeasure(say, read.measures[m], dump.measures[m], m);
  if (read.playOrder && dump.playOrder) same(say, 'order of play', read.playOrder.join(' '), dump.playOrder.join(' '));
  return problems;
}

function compareMeasure(say, read, dump, index) {
  const where = what => `measure ${index + 1}: ${what}`;
  const ticks = ([n, d]) => (n * read.divisions) / d;
  same(say, where('implicit'), read.implicit, dump.implicit);
  if (dump.key !== null) same(say, where('key'), read.fifths, dump.key);
  if (dump.meter !== null) same(say, where('meter'), read.meter, dump.meter);
  if (dump.swing !== null) same(say, where('feel'), read.swing, dump.swing);
  if (dump.tempo !== null) same(say, where('tempo'), read.tempo, dump.tempo);
  for (const [staff, notes] of Object.entries(dump.staves)) {
    const found = read.notes.filter(n => n.staff === Number(staff)).sort((a, b) => a.voice - b.voice);
    same(say, where(`notes on staff ${staff}`), found.length, notes.length);
    for (let i = 0; i < Math.min(found.length, notes.length); i++) compareNote(say, where(`staff ${staff}, note ${i + 1}`), found[i], notes[i], read, ticks);
    for (const voice of new Set(found.map(n => n.voice))) {
      const ends = found.filter(n => n.voice === voice).map(n => n.onset + n.duration);
      same(say, where(`end of voice ${voice}`), Math.max(...ends), ticks(dump.length));
    }
  }
  same(say, where('chord symbols'), read.harmonies.length, dump.harmonies.length);
  for (let i = 0; i < Math.min(read.harmonies.length, dump.harmonies.length); i++) compareHarmony(say, where(`chord ${i + 1}`), read.harmonies[i], dump.harmonies[i], ticks);
}

function compareNote(say, where, found, note, measure, ticks) {
  same(say, `${where}, voice`, found.voice, note.voice);
  same(say, `${where}, onset`, found.onset, ticks(note.onset));
  same(say, `${where}, duration`, found.duration, ticks(note.duration));
  for (const key of ['rest', 'measureRest', 'shown', 'silent', 'string', 'fret', 'bend', 'tieStart', 'tieStop', 'tupletStarts', 'tupletStops', 'hammerOns', 'pullOffs', 'slides'])
    same(say, `${where}, ${key}`, found[key], note[key]);
  same(say, `${where}, head`, found.head, note.head);
  if (note.rest || note.pitch === null) return;
  same(say, `${where}, pitch`, `${found.step}${found.alter}`, `${note.pitch.step}${note.pitch.alter}`);
  const sounding = midi(found) + measure.halfSteps;
  same(say, `${where}, sounding pitch`, sounding, midi(note.pitch));
  if (found.fret === null) return;
  const lines = [...measure.tuning.lines].sort((a, b) => b.line - a.line);
  const above = note.harmonic ? HARMONICS[found.fret] : found.fret;
  same(say, `${where}, string and fret on the tuning`, midi(lines[found.string - 1]) + measure.tuning.capo + above, sounding);
}

function compareHarmony(say, where, found, harmony, ticks) {
  same(say, `${where}, onset`, found.onset, ticks(harmony.onset));
  if (harmony.root === null) {
    same(say, `${where}, kind`, found.kind, 'none');
    return;
  }
  same(say, `${where}, root`, `${found.root.step}${found.root.alter}`, `${harmony.root.step}${harmony.root.alter}`);
  same(say, `${where}, bass`, found.bass && `${found.bass.step}${found.bass.alter}`, harmony.bass && `${harmony.bass.step}${harmony.bass.alter}`);
  same(say, `${where}, tones`, tonesOf(found, harmony.tones).join(' '), [...harmony.tones].sort((a, b) => a - b).join(' '));
  same(say, `${where}, diagram`, found.frame.join(' '), harmony.frame.join(' '));
}

// Half steps above the root of all tones that kind and degrees give.
function tonesOf(harmony, expected) {
  const degrees = KINDS[harmony.kind];
  if (!degrees) return [`unknown kind ${harmony.kind}`];
  const tones = Object.entries(degrees).map(([number, halfSteps]) => ({ number: Number(number), halfSteps }));
  for (const { value, alter, type } of harmony.degrees) {
    const at = tones.findIndex(t => t.number === value);
    if (type === 'add') tones.push({ number: value, halfSteps: ADDED[value] + alter });
    else if (at < 0) return [`no degree ${value} to ${type}`];
    else if (type === 'alter') tones[at].halfSteps += alter;
    else tones.splice(at, 1);
  }
  const leftOut = /13th$/.test(harmony.kind) && !expected.includes(17) ? tones.findIndex(t => t.number === 11 && t.halfSteps === 17) : -1;
  if (leftOut >= 0) tones.splice(leftOut, 1);
  return [0, ...tones.map(t => t.halfSteps)].sort((a, b) => a - b);
}

function same(say, what, found, expected) {
  if (found !== expected) say(`${what}: read ${found}, the score says ${expected}`);
}
