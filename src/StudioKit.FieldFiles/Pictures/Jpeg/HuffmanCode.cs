namespace StudioKit.FieldFiles.Pictures.Jpeg;

/// <summary>Makes the Huffman table that is shortest for given uses of the symbols (ISO/IEC 10918-1 annex K.2).</summary>
internal static class HuffmanCode
{
    // One more symbol, used once, takes the code of ones alone, which a table must not give away.
    private const int Symbols = 257;
    private const int LongestTree = 64;
    private const int LongestCode = 16;

    public static HuffmanTable For(long[] uses)
    {
        var lengths = Lengths(uses);
        var counts = new int[LongestTree + 1];
        foreach (var length in lengths.Where(length => length > 0))
        {
            counts[length]++;
        }

        Shorten(counts);
        var symbols = Enumerable.Range(0, Symbols - 1).Where(symbol => lengths[symbol] > 0).OrderBy(symbol => lengths[symbol]).Select(symbol => (byte)symbol);
        return new HuffmanTable([.. counts.Skip(1).Take(LongestCode).Select(count => (byte)count)], [.. symbols]);
    }

    private static int[] Lengths(long[] uses)
    {
        var lengths = new int[Symbols];
        List<(long Uses, int[] Members)> groups = [(1, [Symbols - 1])];
        groups.AddRange(Enumerable.Range(0, Symbols - 1).Where(symbol => uses[symbol] > 0).Select(symbol => (uses[symbol], new[] { symbol })));
        while (groups.Count > 1)
        {
            var (first, second) = (TakeRarest(groups), TakeRarest(groups));
            int[] joined = [.. first.Members, .. second.Members];
            Array.ForEach(joined, symbol => lengths[symbol]++);
            groups.Add((first.Uses + second.Uses, joined));
        }

        return lengths;
    }

    private static (long Uses, int[] Members) TakeRarest(List<(long Uses, int[] Members)> groups)
    {
        var rarest = groups.MinBy(group => group.Uses);
        groups.Remove(rarest);
        return rarest;
    }

    // Codes longer than sixteen bits move up in pairs; then the one that is all ones goes.
    private static void Shorten(int[] counts)
    {
        for (var length = counts.Length - 1; length > LongestCode; length--)
        {
            while (counts[length] > 0)
            {
                var shorter = length - 2;
                while (counts[shorter] == 0)
                {
                    shorter--;
                }

                counts[length] -= 2;
                counts[length - 1]++;
                counts[shorter + 1] += 2;
                counts[shorter]--;
            }
        }

        counts[Array.FindLastIndex(counts, count => count > 0)]--;
    }
}
