// Reader two: a library that reads MusicXML into a typed tree made from the schema, and replaces whatever the schema does not allow
// with a default. Times are counted here, by the rules of the standard; what the tree writes again has to be what it read.
import library from '@stringsync/musicxml';

export const name = 'tree';

export function read(xml) {
  const document = library.MusicXML.parse(xml);
  const problems = [];
  const [before, after] = [normal(xml), normal(document.serialize())];
  if (before !== after) {
    let i = 0;
    while (before[i] === after[i]) i++;
    problems.push(`the tree differs from the file at: ${before.slice(Math.max(0, i - 60), i + 60)} | ${after.slice(Math.max(0, i - 60), i + 60)}`);
  }
  const root = document.getRoot();
  const part = all(root, 'part')[0];
  const measures = [];
  let divisions;
  let halfSteps = 0;
  let tuning = null;
  for (const measure of all(part, 'measure')) {
    const result = { number: measure.getNumber(), implicit: measure.getImplicit() === 'yes', notes: [], harmonies: [], fifths: null, meter: null, swing: null, tempo: null };
    let at = 0;
    let start = 0;
    for (const e of measure.getValues()) {
      switch (e.schema.name) {
        case 'attributes':
          divisions = number(e, 'divisions') ?? divisions;
          for (const t of all(e, 'transpose')) halfSteps = number(t, 'chromatic') + 12 * (number(t, 'octave-change') ?? 0);
          for (const d of all(e, 'staff-details').filter(d => all(d, 'staff-tuning').length > 0))
            tuning = {
              staff: d.getNumber() ?? 1,
              capo: number(d, 'capo') ?? 0,
              lines: all(d, 'staff-tuning').map(t => ({ line: t.getLine(), step: text(t, 'tuning-step'), alter: number(t, 'tuning-alter') ?? 0, octave: number(t, 'tuning-octave') })),
            };
          result.fifths = all(e, 'fifths').map(f => f.getValue?.() ?? f.contents[0])[0] ?? result.fifths;
          if (all(e, 'beats').length > 0) result.meter = `${text(e, 'beats')}/${text(e, 'beat-type')}`;
          break;
        case 'note': {
          const isChord = all(e, 'chord').length > 0;
          if (!isChord) start = at;
          const note = readNote(e, start);
          result.notes.push(note);
          if (!isChord) at += note.duration;
          break;
        }
        case 'backup':
          at -= number(e, 'duration');
          break;
        case 'forward':
          at += number(e, 'duration');
          break;
        case 'harmony':
          result.harmonies.push(readHarmony(e, at));
          break;
        case 'direction':
          result.tempo ??= all(e, 'sound').map(s => s.getTempo()).find(t => t !== null) ?? null;
          break;
        case 'sound':
          for (const s of all(e, 'swing')) result.swing = all(s, 'straight').length > 0 ? 'straight' : `${text(s, 'first')}:${text(s, 'second')} ${text(s, 'swing-type')}`;
          break;
      }
    }
    Object.assign(result, { divisions, halfSteps, tuning });
    measures.push(result);
  }
  return { name, title: text(root, 'movement-title') ?? text(root, 'work-title'), measures, playOrder: null, problems };
}

function readNote(note, onset) {
  const ties = all(note, 'tie').map(t => t.getType());
  const rest = all(note, 'rest')[0];
  const tuplets = all(note, 'tuplet').map(t => t.getType());
  return {
    staff: number(note, 'staff') ?? 1,
    voice: Number(text(note, 'voice')),
    onset,
    duration: number(note, 'duration'),
    rest: rest !== undefined,
    measureRest: rest?.getMeasure() === 'yes',
    shown: note.getPrintObject() !== 'no',
    step: text(note, 'step'),
    alter: number(note, 'alter') ?? 0,
    octave: number(note, 'octave'),
    string: number(note, 'string'),
    fret: number(note, 'fret'),
    bend: number(note, 'bend-alter'),
    head: text(note, 'notehead'),
    tieStart: ties.includes('start'),
    tieStop: ties.includes('stop'),
    silent: note.getDynamics() === 0,
    hammerOns: all(note, 'hammer-on').length,
    pullOffs: all(note, 'pull-off').length,
    slides: all(note, 'slide').length,
    tupletStarts: tuplets.filter(t => t === 'start').length,
    tupletStops: tuplets.filter(t => t === 'stop').length,
  };
}

function readHarmony(harmony, at) {
  const noteOf = kind => all(harmony, kind).map(n => ({ step: text(n, `${kind}-step`), alter: number(n, `${kind}-alter`) ?? 0 }))[0] ?? null;
  return {
    onset: at + (number(harmony, 'offset') ?? 0),
    kind: text(harmony, 'kind'),
    root: noteOf('root'),
    bass: noteOf('bass'),
    degrees: all(harmony, 'degree').map(d => ({ value: number(d, 'degree-value'), alter: number(d, 'degree-alter'), type: text(d, 'degree-type') })),
    frame: all(harmony, 'frame-note').map(f => `${text(f, 'string')}.${text(f, 'fret')}`),
  };
}

// Every element of a name at or below a place in the tree, in order.
function all(place, name) {
  const found = [];
  const visit = item => {
    if (Array.isArray(item)) item.forEach(visit);
    else if (item?.schema) {
      if (item.schema.name === name) found.push(item);
      else visit(item.contents);
    }
  };
  visit(place.contents);
  return found;
}

function text(place, name) {
  const element = all(place, name)[0];
  return element === undefined ? null : String(element.contents[0] ?? '');
}

function number(place, name) {
  const value = text(place, name);
  return value === null ? null : Number(value);
}

// One spelling of a document: no space between elements, attributes in order of name, empty elements closed in one way, characters unescaped alike.
function normal(xml) {
  return xml
    .replace(/<\?xml[^>]*\?>/, '')
    .replace(/>\s+</g, '><')
    .replace(/<([\w-]+)((?:\s+[\w:-]+="[^"]*")*)\s*(\/?)>/g, (_, element, attributes, slash) => `<${element}${(attributes.match(/[\w:-]+="[^"]*"/g) ?? []).sort().map(a => ` ${a}`).join('')}${slash}>`)
    .replace(/<([\w-]+)([^<>]*)><\/\1>/g, '<$1$2/>')
    .replaceAll('&quot;', '"')
    .replaceAll('&gt;', '>')
    .trim();
}
