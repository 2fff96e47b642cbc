using System.Runtime.CompilerServices;

[assembly: InternalsVisibleTo("SheetPress.Lessons.Tests")]
