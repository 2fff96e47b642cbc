// Writes the chord dictionary, the scale dictionary and the key tables of the npm package tonal (MIT) as JSON beside this script.
// Run once after a change of version: npm ci && npm run make
import { writeFileSync } from "node:fs";
import { Chord, ChordType, Key, Scale, ScaleType } from "tonal";

const roots = ["C", "Eb", "F#"];
const notesOf = (get) => Object.fromEntries(roots.map((root) => [root, get(root).notes.join(" ")]));

// One line a row keeps differences readable.
const save = (file, rows) =>
  writeFileSync(new URL(file, import.meta.url), "[\n" + rows.map((row) => "  " + JSON.stringify(row)).join(",\n") + "\n]\n");

save(
  "chords.json",
  ChordType.all().map((type) => ({
    name: type.name,
    suffixes: type.aliases,
    notes: notesOf((root) => Chord.getChord(type.aliases[0], root)),
  })),
);

save(
  "scales.json",
  ScaleType.all().map((type) => ({
    names: [type.name, ...type.aliases],
    notes: notesOf((root) => Scale.get(`${root} ${type.name}`)),
  })),
);

// Tonics of the fifteen major and fifteen minor keys, from seven flats to seven sharps.
const majors = "Cb Gb Db Ab Eb Bb F C G D A E B F# C#".split(" ");
const minors = "Ab Eb Bb F C G D A E B F# C# G# D# A#".split(" ");

save("keys.json", [
  ...majors.map((tonic) => {
    const key = Key.majorKey(tonic);
    return {
      key: `${tonic} major`,
      signature: key.alteration,
      scale: key.scale.join(" "),
      triads: key.triads.join(" "),
      sevenths: key.chords.join(" "),
      scales: key.chordScales,
      secondaryDominants: key.secondaryDominants.join(" ").trim(),
    };
  }),
  ...minors.map((tonic) => {
    const key = Key.minorKey(tonic);
    return {
      key: `${tonic} minor`,
      signature: key.alteration,
      scale: key.natural.scale.join(" "),
      triads: key.natural.triads.join(" "),
      sevenths: key.natural.chords.join(" "),
      scales: key.natural.chordScales,
      harmonicSevenths: key.harmonic.chords.join(" "),
      harmonicScales: key.harmonic.chordScales,
      melodicSevenths: key.melodic.chords.join(" "),
      melodicScales: key.melodic.chordScales,
    };
  }),
]);
