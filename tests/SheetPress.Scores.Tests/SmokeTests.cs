namespace SheetPress.Scores.Tests;

public class SmokeTests
{
}
