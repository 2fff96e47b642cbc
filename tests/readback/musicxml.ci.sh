#!/usr/bin/env bash
# musicxml.ci.sh OUT: reads MusicXML with two libraries of others and compares every note with the score it was made from.
# The test project writes the files of its samples and of the demo lessons and, beside each, its score; the demo lessons in OUT have to be
# the same to the byte.
set -euo pipefail
here="$(cd "$(dirname "$0")" && pwd)"
root="$here/../.."
out="${1:?name the folder with the demo lessons}"
work="$(mktemp -d)"
trap 'rm -rf "$work"' EXIT

READBACK_DIR="$work" dotnet run --no-build -c "${CONFIGURATION:-Release}" --project "$root/tests/SheetPress.Publishing.Tests" -- -class SheetPress.Publishing.Tests.MusicXml.ReadBackFilesTests >"$work/test.log" || { cat "$work/test.log"; exit 1; }
find "$work" -name '*.musicxml' -print0 | sort -z | xargs -0 node "$here/musicxml-readback.mjs"

# Every MusicXML file of the demo lessons is one of those just read.
while IFS= read -r file; do
  cmp "$file" "$work/lessons/${file#"$out"/}"
done < <(find "$out" -name '*.musicxml' | sort)

# The readers have to find a change: one fret, one octave, one length.
sample="$work/technique"
for change in '0,/<fret>3/s//<fret>4/' '0,/<octave>2/s//<octave>3/' '0,/<duration>1</s//<duration>2</'; do
  cp "$sample.score.json" "$work/changed.score.json"
  sed "$change" "$sample.musicxml" >"$work/changed.musicxml"
  if cmp -s "$sample.musicxml" "$work/changed.musicxml" || node "$here/musicxml-readback.mjs" "$work/changed.musicxml" >/dev/null 2>&1; then
    echo "the change $change was not found"
    exit 1
  fi
done
