using System.CommandLine;
using System.Text;
using SheetPress.Cli;

Console.OutputEncoding = new UTF8Encoding(encoderShouldEmitUTF8Identifier: false);
var root = new RootCommand("""
    SheetPress makes music lesson sheets: a typeset handout, MusicXML and MIDI from a short lesson in YAML.

    Examples:
      sheetpress new "Round the cycle"          a commented lesson to start from
      sheetpress build lessons -o out           sheets for every lesson in a folder
      sheetpress build my-lesson.yaml --key "G minor" --instrument bass-5 --paper letter
      sheetpress check lessons                  only look for problems
      sheetpress explain "Dm7 | G7 | Cmaj7" --key "C major"
      sheetpress styles walking-line            one exercise style with its options

    Exit codes: 0 all well, 1 problems in lessons or options, 2 files that cannot be read or written.
    """);
root.Add(BuildCommand.Create());
root.Add(CheckCommand.Create());
root.Add(ExplainCommand.Create());
root.Add(StylesCommand.Create());
root.Add(NewCommand.Create());
return await root.Parse(args).InvokeAsync();
