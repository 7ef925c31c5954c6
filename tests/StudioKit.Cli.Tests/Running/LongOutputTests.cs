using StudioKit.Cli.Running;

namespace StudioKit.Cli.Tests.Running;

public sealed class LongOutputTests
{
    // Pairs of code units, line ends of two characters, and lines of any length, some of them just as long as what is held before it is packed.
    private static readonly Gen<string[]> Pieces =
        Gen.OneOf(Gen.Const("\n"), Gen.Const("\r\n"), Gen.Const("蛾🦋"), Gen.Const("é"), Gen.Int[0, 70_000].Select(length => new string('x', length)), Gen.Int[-3, 3].Select(more => new string('y', (1 << 20) + more)))
        .Array[0, 12];

    [Fact]
    public void A_held_document_is_handed_on_as_it_came_and_no_pair_of_code_units_is_torn() =>
        Pieces.Sample(
            pieces =>
            {
                using var document = new HeldDocument();
                Write(document, pieces);
                using var seen = new Portions();
                document.HandOn(seen);

                seen.ToString().Should().Be(string.Concat(pieces));
                seen.Seen.Where(portion => portion.Length > 0).Should().NotContain(portion => char.IsHighSurrogate(portion.Last()) || char.IsLowSurrogate(portion.First()));
                string.Join('|', seen.Seen).Should().NotContain("\r|");
            },
            iter: 30);

    /// <summary>Signs come one code unit at a time, wherever what is held becomes enough to be packed.</summary>
    [Theory]
    [InlineData(-5)]
    [InlineData(-4)]
    [InlineData(-3)]
    [InlineData(-2)]
    [InlineData(-1)]
    public void A_pair_of_code_units_or_a_line_end_is_never_packed_in_two(int more)
    {
        using var document = new HeldDocument();
        document.Write(new string('y', (1 << 20) + more));
        "🦋\r\n🦋".ToList().ForEach(document.Write);
        using var seen = new Portions();

        document.HandOn(seen);

        seen.ToString()[^7..].Should().Be("y🦋\r\n🦋");
        string.Join('|', seen.Seen).Should().NotContain("\r|").And.NotContain("\uD83E|");
    }

    [Fact]
    public void A_held_document_that_is_not_printed_is_there_whole()
    {
        using var document = new HeldDocument();
        Write(document, ["{\n", "  \"name\": \"蛾🦋\"\n", "}\n"]);

        document.Whole().Should().Be("{\n  \"name\": \"蛾🦋\"\n}\n");
    }

    [Fact]
    public void Lines_are_handed_on_whole_and_as_they_came() =>
        Pieces.Sample(
            pieces =>
            {
                using var seen = new Portions();
                using (var lines = new LinesTogether(seen))
                {
                    Write(lines, pieces);
                }

                seen.ToString().Should().Be(string.Concat(pieces));
                seen.Seen.SkipLast(1).Should().NotContain(portion => !portion.EndsWith('\n'));
            },
            iter: 60);

    [Fact]
    public void Many_lines_are_handed_on_in_few_portions()
    {
        using var seen = new Portions();
        using (var lines = new LinesTogether(seen))
        {
            foreach (var number in Enumerable.Range(0, 10_000))
            {
                lines.WriteLine($"row {number % 10}");
            }
        }

        seen.Seen.Should().HaveCountLessThan(10);
    }

    /// <summary>The rule is that of the characters one by one: plain ASCII is passed over at a glance, and nothing else is.</summary>
    [Fact]
    public void Every_character_that_is_shown_for_what_it_is_is_found_in_a_plain_text()
    {
        foreach (var code in Enumerable.Range(0, 0x300))
        {
            var text = $"fen {(char)code} edge";
            var isShown = code is not ('\n' or '\t') && (char.IsControl((char)code) || char.GetUnicodeCategory((char)code) == System.Globalization.UnicodeCategory.Format);

            HarmlessText.Of(text).Should().Be(isShown ? $"fen \\u{code:X4} edge" : text);
        }
    }

    private static void Write(TextWriter writer, string[] pieces)
    {
        foreach (var (piece, i) in pieces.Select((piece, i) => (piece, i)))
        {
            switch (i % 3)
            {
                case 0:
                    writer.Write(piece);
                    break;
                case 1:
                    writer.Write(piece.AsSpan());
                    break;
                default:
                    foreach (var sign in piece[..Math.Min(9, piece.Length)])
                    {
                        writer.Write(sign);
                    }

                    writer.Write(piece.ToCharArray(), Math.Min(9, piece.Length), Math.Max(0, piece.Length - 9));
                    break;
            }
        }
    }

    private sealed class Portions : StringWriter
    {
        public List<string> Seen { get; } = [];

        public override void Write(string? value)
        {
            Seen.Add(value ?? "");
            base.Write(value);
        }

        public override void Write(char[] buffer, int index, int count)
        {
            Seen.Add(new string(buffer, index, count));
            base.Write(buffer, index, count);
        }
    }
}
