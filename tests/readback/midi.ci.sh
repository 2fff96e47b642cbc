#!/usr/bin/env bash
# midi.ci.sh OUT: reads MIDI files with a library of others. The test project writes files and, beside each, its score, which are
# compared note by note; the .mid files of the demo lessons in OUT, where there are any, are read too.
set -euo pipefail
here="$(cd "$(dirname "$0")" && pwd)"
root="$here/../.."
out="${1:?name the folder with the demo lessons}"
work="$(mktemp -d)"
trap 'rm -rf "$work"' EXIT

READBACK_DIR="$work" dotnet run --no-build -c "${CONFIGURATION:-Release}" --project "$root/tests/SheetPress.Publishing.Tests" -- -class SheetPress.Publishing.Tests.MidiReadBackFilesTests >"$work/test.log" || { cat "$work/test.log"; exit 1; }
find "$work" "$out" -name '*.mid' -print0 | sort -z | xargs -0 node "$here/midi-readback.mjs"

# The reader has to find a change: the key of the first note of a file (a note on of channel 1 starts with byte 90).
change_key() {
  node -e '
    const fs = require("node:fs");
    const bytes = fs.readFileSync(process.argv[1]);
    const at = bytes.lastIndexOf("MTrk");
    const on = bytes.indexOf(0x90, at + 40);
    bytes[on + 1] += 1;
    fs.writeFileSync(process.argv[2], bytes);' "$1" "$2"
}
change_key "$work/technique.mid" "$work/changed.mid"
cp "$work/technique.score.json" "$work/changed.score.json"
if node "$here/midi-readback.mjs" "$work/changed.mid" >/dev/null 2>&1; then
  echo "a changed key was not found"
  exit 1
fi
