namespace SheetPress.Lessons.Tests;

public class SmokeTests
{
}
