namespace SheetPress.Cli.Tests;

public class SmokeTests
{
}
