namespace SheetPress.Theory.Tests;

public class SmokeTests
{
}
