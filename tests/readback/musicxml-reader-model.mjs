// Reader one: a library that reads MusicXML into a model of its own. Times of notes are those the library works out.
import { generatePlaybackSequence, parse, validate, withAbsolutePositions } from 'musicxml-io';

export const name = 'model';

export function read(xml) {
  const score = parse(xml);
  const problems = validate(score).errors.map(e => `the reader finds: ${e.message} (measure ${e.location?.measureNumber})`);
  const measures = [];
  let divisions;
  const transposition = { chromatic: 0, octaves: 0 };
  const tunings = [];
  for (const measure of score.parts[0].measures) {
    const attributes = [measure.attributes, ...measure.entries.filter(e => e.type === 'attributes').map(e => e.attributes)].filter(Boolean);
    for (const a of attributes) {
      divisions = a.divisions ?? divisions;
      if (a.transpose) {
        transposition.chromatic = a.transpose.chromatic;
        transposition.octaves = a.transpose.octaveChange ?? 0;
      }
      for (const d of a.staffDetails ?? [])
        if (d.staffTuning?.length)
          tunings.push({ staff: d.number ?? 1, capo: d.capo ?? 0, lines: d.staffTuning.map(t => ({ line: t.line, step: t.tuningStep, alter: t.tuningAlter ?? 0, octave: t.tuningOctave })) });
    }
    const positions = new Map(withAbsolutePositions(measure).map(p => [p._id ?? p.note?._id, p.absolutePosition ?? p.position]));
    measures.push({
      number: measure.number,
      implicit: measure.implicit === true,
      divisions,
      halfSteps: transposition.chromatic + 12 * transposition.octaves,
      tuning: tunings.at(-1) ?? null,
      fifths: attributes.map(a => a.key?.fifths).find(f => f !== undefined) ?? null,
      meter: attributes.map(a => a.time && `${a.time.beats}/${a.time.beatType}`).find(Boolean) ?? null,
      notes: measure.entries.filter(e => e.type === 'note').map(n => readNote(n, positions.get(n._id))),
      harmonies: readHarmonies(measure),
      swing: measure.entries.filter(e => e.type === 'sound' && e.swing).map(e => (e.swing.straight ? 'straight' : `${e.swing.first}:${e.swing.second} ${e.swing.swingType}`))[0] ?? null,
      tempo: measure.entries.filter(e => e.type === 'direction' && e.sound?.tempo).map(e => e.sound.tempo)[0] ?? null,
    });
  }
  return { name, title: score.metadata?.movementTitle ?? score.metadata?.workTitle, measures, playOrder: generatePlaybackSequence(score).map(m => m.measureIndex), problems };
}

function readNote(n, onset) {
  const technical = (n.notations ?? []).filter(x => x.type === 'technical');
  const value = (kind, key) => technical.find(t => t.technical === kind)?.[key] ?? null;
  const ties = n.ties ?? (n.tie ? [n.tie] : []);
  return {
    staff: n.staff ?? 1,
    voice: Number(n.voice),
    onset,
    duration: n.duration,
    rest: n.rest !== undefined,
    measureRest: n.rest?.measure === true,
    shown: n.printObject !== false,
    step: n.pitch?.step ?? null,
    alter: n.pitch?.alter ?? 0,
    octave: n.pitch?.octave ?? null,
    string: value('string', 'string'),
    fret: value('fret', 'fret'),
    bend: value('bend', 'bendAlter'),
    head: n.notehead?.value ?? null,
    tieStart: ties.some(t => t.type === 'start'),
    tieStop: ties.some(t => t.type === 'stop'),
    silent: n.dynamics === 0,
    hammerOns: technical.filter(t => t.technical === 'hammer-on').length,
    pullOffs: technical.filter(t => t.technical === 'pull-off').length,
    slides: (n.notations ?? []).filter(x => x.type === 'slide').length,
    tupletStarts: (n.notations ?? []).filter(x => x.type === 'tuplet' && x.tupletType === 'start').length,
    tupletStops: (n.notations ?? []).filter(x => x.type === 'tuplet' && x.tupletType === 'stop').length,
  };
}

// A harmony stands where the notes before it ended, moved by its offset.
function readHarmonies(measure) {
  const found = [];
  let at = 0;
  for (const e of measure.entries) {
    if (e.type === 'note' && !e.chord) at += e.duration;
    if (e.type === 'backup') at -= e.duration;
    if (e.type === 'forward') at += e.duration;
    if (e.type !== 'harmony') continue;
    found.push({
      onset: at + (e.offset ?? 0),
      kind: e.kind,
      root: { step: e.root.rootStep, alter: e.root.rootAlter ?? 0 },
      bass: e.bass ? { step: e.bass.bassStep, alter: e.bass.bassAlter ?? 0 } : null,
      degrees: (e.degrees ?? []).map(d => ({ value: d.degreeValue, alter: d.degreeAlter ?? 0, type: d.degreeType })),
      frame: (e.frame?.frameNotes ?? []).map(f => `${f.string}.${f.fret}`),
    });
  }
  return found;
}
