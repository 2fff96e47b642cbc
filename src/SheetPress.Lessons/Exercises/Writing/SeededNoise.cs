namespace SheetPress.Lessons;

/// <summary>Repeatable chance: a number from 0 (included) to 1 for a seed and two more numbers, the same on every machine (SplitMix64 by Steele, Lea and Flood, 2014).</summary>
internal static class SeededNoise
{
    public static double At(int seed, int first, int second)
    {
        var z = Mix(Mix(unchecked((ulong)seed * 0x9E3779B97F4A7C15UL)) ^ unchecked((ulong)first << 32 ^ (uint)second));
        return (z >> 11) * (1.0 / (1UL << 53));
    }

    private static ulong Mix(ulong z)
    {
        unchecked
        {
            z += 0x9E3779B97F4A7C15UL;
            z = (z ^ (z >> 30)) * 0xBF58476D1CE4E5B9UL;
            z = (z ^ (z >> 27)) * 0x94D049BB133111EBUL;
            return z ^ (z >> 31);
        }
    }
}
