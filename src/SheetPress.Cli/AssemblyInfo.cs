using System.Runtime.CompilerServices;

[assembly: InternalsVisibleTo("SheetPress.Cli.Tests")]
