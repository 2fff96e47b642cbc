namespace SheetPress.Publishing.Tests;

public class SmokeTests
{
}
