namespace SheetPress.Engraving.Tests.Fonts;

public class ShapeCacheTests
{
    [Fact]
    public void It_remembers_and_stays_bounded()
    {
        var cache = new ShapeCache<string>();
        var made = 0;
        string Make(string text, TextFont font)
        {
            made++;
            return $"{font}: {text}";
        }
        cache.Get("a", TextFont.Serif, Make).ShouldBe("Serif: a");
        cache.Get("a", TextFont.Serif, Make).ShouldBe("Serif: a");
        cache.Get("a", TextFont.Sans, Make).ShouldBe("Sans: a");
        made.ShouldBe(2);
        for (var i = 0; i < 3 * ShapeCache<string>.Capacity; i++)
        {
            cache.Get($"{i}", TextFont.Serif, Make).ShouldBe($"Serif: {i}");
            cache.Count(TextFont.Serif).ShouldBeLessThanOrEqualTo(ShapeCache<string>.Capacity);
        }
    }

    [Fact]
    public void Long_texts_are_not_kept()
    {
        var cache = new ShapeCache<string>();
        cache.Get(new string('x', 500), TextFont.Serif, (text, _) => text).Length.ShouldBe(500);
        cache.Count(TextFont.Serif).ShouldBe(0);
    }
}
