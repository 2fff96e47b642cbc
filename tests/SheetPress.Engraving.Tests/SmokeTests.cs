namespace SheetPress.Engraving.Tests;

public class SmokeTests
{
}
