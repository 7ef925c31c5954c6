using System.Text;
using StudioKit.Kits.Editing;

namespace StudioKit.Kits.Tests.Editing;

/// <summary>Lines and columns, against counts that a reader makes by hand and against .NET's own encodings.</summary>
public sealed class TextPlacesTests
{
    // U+1F98B, a butterfly, is beyond the basic plane: two UTF-16 units, four bytes of UTF-8 (RFC 3629, section 3); ° is U+00B0, two bytes.
    private const string Moth = "\U0001F98B";

    private static readonly string[] Letters = ["a", "\t", "°", Moth, "é", "\u0301", " "];

    [Theory]
    [InlineData("ab\ncd", 1, 1, 0)]
    [InlineData("ab\ncd", 1, 3, 2)]
    [InlineData("ab\ncd", 2, 1, 3)]
    [InlineData("ab\r\ncd", 2, 2, 5)]
    [InlineData("ab\rcd", 2, 2, 4)]
    [InlineData("\uFEFFab", 1, 1, 1)]
    [InlineData("\tab", 1, 2, 1)]
    [InlineData("ab\n", 2, 1, 3)]
    [InlineData("", 1, 1, 0)]
    public void A_place_is_found_whatever_ends_the_lines_and_stands_before_them(string text, int line, int column, int offset)
    {
        var places = new TextPlaces(text);

        places.Offset(line, column).Should().Be(offset);
        places.Of(offset).Should().Be((line, column));
    }

    [Theory]
    [InlineData(ColumnUnit.CodeUnits, 6)]
    [InlineData(ColumnUnit.Characters, 5)]
    [InlineData(ColumnUnit.Bytes, 9)]
    public void Columns_are_counted_in_what_the_editor_counts(ColumnUnit unit, int column)
    {
        var text = $"4° {Moth}x";
        var places = new TextPlaces(text, unit);

        places.Offset(1, column).Should().Be(text.IndexOf('x', StringComparison.Ordinal));
        places.LastColumn(1).Should().Be(column + 1);
    }

    [Theory]
    [InlineData(0, 1)]
    [InlineData(1, 0)]
    [InlineData(-1, 1)]
    [InlineData(3, 1)]
    [InlineData(2, 4)]
    [InlineData(int.MaxValue, 1)]
    [InlineData(1, int.MaxValue)]
    public void Outside_the_text_is_no_place(int line, int column) => new TextPlaces("ab\ncd").Offset(line, column).Should().BeNull();

    [Theory]
    [InlineData(ColumnUnit.CodeUnits, 2)]
    [InlineData(ColumnUnit.Bytes, 2)]
    [InlineData(ColumnUnit.Bytes, 4)]
    public void Within_a_character_is_no_place(ColumnUnit unit, int column) => new TextPlaces(Moth + "x", unit).Offset(1, column).Should().BeNull();

    [Fact]
    public void A_line_holds_as_many_columns_as_its_encoding_has_units() => (
        from letters in Gen.Int[0, Letters.Length - 1].Array[0, 30]
        select string.Concat(letters.Select(letter => Letters[letter]))).Sample(line =>
        {
            new TextPlaces("x\r\n" + line, ColumnUnit.Bytes).LastColumn(2).Should().Be(1 + Encoding.UTF8.GetByteCount(line));
            new TextPlaces("x\r\n" + line).LastColumn(2).Should().Be(1 + (Encoding.Unicode.GetByteCount(line) / 2));
            new TextPlaces("x\r\n" + line, ColumnUnit.Characters).LastColumn(2).Should().Be(1 + (Encoding.UTF32.GetByteCount(line) / 4));
        });
}
