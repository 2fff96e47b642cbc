namespace SheetPress.Engraving;

/// <summary>Composes sheets: from content to finished pages.</summary>
public static class SheetComposer
{
    /// <summary>Composes a handout.</summary>
    /// <param name="content">What stands on it.</param>
    /// <param name="style">How it looks.</param>
    public static SheetDocument Compose(HandoutContent content, PageStyle style) => throw new NotImplementedException();
}
