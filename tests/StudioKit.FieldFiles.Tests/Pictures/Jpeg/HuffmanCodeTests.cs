using StudioKit.FieldFiles.Pictures.Jpeg;

namespace StudioKit.FieldFiles.Tests.Pictures.Jpeg;

public sealed class HuffmanCodeTests
{
    // Uses that differ so much that codes without a bound would be longer than sixteen bits are among them.
    private static readonly Gen<long[]> Uses = Gen.Int[0, 40].Select(power => power < 10 ? 0L : 1L << (power - 10)).Array[256]
        .Where(uses => uses.Any(use => use > 0));

    /// <summary>ISO/IEC 10918-1 annex C: at most sixteen bits, and the code of ones alone is given to nobody, so that Kraft's sum stays below 1 by at least one longest code.</summary>
    [Fact]
    public void No_code_is_longer_than_sixteen_bits_nor_all_ones() => Uses.Sample(uses =>
    {
        var counts = HuffmanCode.For(uses).Contents.Take(16).ToArray();
        var longest = Array.FindLastIndex(counts, count => count > 0) + 1;
        return counts.Select((count, i) => Math.ScaleB(count, -(i + 1))).Sum() <= 1 - Math.ScaleB(1, -longest);
    });

    [Fact]
    public void What_is_written_is_read_again() => Gen.Select(Uses, Gen.Int[0, 255].Array[1, 300]).Sample((uses, places) =>
    {
        var table = HuffmanCode.For(uses);
        var used = Enumerable.Range(0, 256).Where(symbol => uses[symbol] > 0).Select(symbol => (byte)symbol).ToList();
        var symbols = places.Select(place => used[place % used.Count]).ToList();
        using var stream = new MemoryStream();
        var bits = new JpegBits(stream);
        symbols.ForEach(symbol => table.Write(bits, symbol));
        bits.Align();
        bits.Flush();
        stream.Position = 0;
        var bytes = new JpegBytes(stream);
        return symbols.TrueForAll(symbol => table.Read(bytes) == symbol);
    });

    /// <summary>Shannon (1948), theorem 9 on noiseless coding: the mean length of the shortest code is the entropy or less than one bit more.</summary>
    [Fact]
    public void The_code_is_shortest_to_within_a_bit_of_the_entropy() => Gen.Long[1, 200].Array[2, 256].Sample(some =>
    {
        var uses = new long[256];
        some.CopyTo(uses, 0);
        var contents = HuffmanCode.For(uses).Contents.ToArray();
        var lengths = contents.Take(16).SelectMany((count, i) => Enumerable.Repeat(i + 1, count)).ToList();
        var (all, mean) = ((double)some.Sum(), lengths.Select((length, i) => length * uses[contents[16 + i]]).Sum() / (double)some.Sum());
        var entropy = -some.Sum(use => use / all * Math.Log2(use / all));

        // The code that is kept free costs a bit at most.
        return mean >= entropy - 1e-9 && mean < entropy + 2;
    });
}
