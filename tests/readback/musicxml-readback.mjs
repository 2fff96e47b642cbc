// node musicxml-readback.mjs FILE.musicxml...
// Reads each file with two libraries and compares every note, rest and chord symbol with the score as FILE.score.json has it.
// Exit code 1 when anything differs, when a file has no score beside it, or when there is no file.
import { readFileSync } from 'node:fs';
import { compare } from './musicxml-compare.mjs';
import * as model from './musicxml-reader-model.mjs';
import * as tree from './musicxml-reader-tree.mjs';

const files = process.argv.slice(2);
let failed = 0;
let notes = 0;
for (const file of files) {
  const bytes = readFileSync(file);
  const dump = JSON.parse(readFileSync(file.replace(/\.musicxml$/, '.score.json'), 'utf8'));
  const problems = [];
  if (bytes[0] !== 0x3c || bytes.includes(0x0d)) problems.push('the file has to start with "<" and end its lines with LF alone');
  for (const reader of [model, tree]) {
    try {
      const read = reader.read(bytes.toString('utf8'));
      notes += read.measures.reduce((sum, m) => sum + m.notes.length, 0);
      problems.push(...compare(read, dump).map(p => `${reader.name}: ${p}`));
    } catch (e) {
      problems.push(`${reader.name}: ${e.stack}`);
    }
  }
  if (problems.length === 0) continue;
  failed++;
  console.error(`${file}: ${problems.length} differences\n${problems.slice(0, 12).map(p => `  ${p}`).join('\n')}`);
}
console.log(`${files.length} files read twice, ${notes} notes and rests compared, ${failed} files differ`);
process.exit(failed > 0 || files.length === 0 ? 1 : 0);
