using StudioKit.Planning.Tables;

namespace StudioKit.Planning.Tests.Tables;

/// <summary>The rules are those of RFC 4180, section 2.</summary>
public sealed class CsvTextTests
{
    /// <summary>The standard's own examples of fields with a line break and with quotation marks in them.</summary>
    [Theory]
    [InlineData("\"aaa\",\"b\r\nbb\",\"ccc\"\r\nzzz,yyy,xxx", "aaa", "b\r\nbb", "ccc")]
    [InlineData("\"aaa\",\"b\"\"bb\",\"ccc\"\r\nzzz,yyy,xxx\r\n", "aaa", "b\"bb", "ccc")]
    public void The_standards_examples_are_read_as_it_says(string text, params string[] first)
    {
        var rows = CsvText.Read(text);

        rows.Should().HaveCount(2);
        rows[0].Select(field => field.Text).Should().Equal(first);
        rows[1].Select(field => field.Text).Should().Equal("zzz", "yyy", "xxx");
    }

    [Theory]
    [InlineData("\n")]
    [InlineData("\r\n")]
    public void What_is_written_is_read_back_to_the_letter(string lineEnd) =>
        Gen.String[Gen.Char["ab ,\"\r\n\té"], 0, 6].Array[1, 4].Array[1, 5]
            .Where(rows => Array.TrueForAll(rows, row => Array.Exists(row, field => field.Length > 0)))
            .Sample(rows => CsvText.Read(CsvText.Write(rows, lineEnd)).Select(row => row.Select(field => field.Text))
                .Should().BeEquivalentTo(rows, options => options.WithStrictOrdering()));

    [Theory]
    [InlineData("a,b\rc,d\r")]
    [InlineData("a,b\nc,d\n")]
    [InlineData("\uFEFF a ,\tb\r\n\r\n,\r\nc,d")]
    public void Line_ends_of_any_machine_blanks_and_empty_rows_make_no_difference(string text) =>
        CsvText.Read(text).Select(row => string.Join('|', row.Select(field => field.Text))).Should().Equal("a|b", "c|d");

    [Fact]
    public void A_field_knows_its_line_even_below_a_field_of_several_lines()
    {
        var rows = CsvText.Read("head\r\n\"two\r\nlines\",x\r\n\r\nlast, y");

        rows.Select(row => row[0].Line).Should().Equal(1, 2, 5);
        rows[2][1].Column.Should().Be(7);
    }

    /// <remarks>Published advice on cells that a spreadsheet works out, from memory: those that begin with = + - @, a tab or a carriage return.</remarks>
    [Theory]
    [InlineData("=1+1", "'=1+1")]
    [InlineData("+rail", "'+rail")]
    [InlineData("-2 legs", "'-2 legs")]
    [InlineData("@left", "'@left")]
    [InlineData("\t=1+1", "'\t=1+1")]
    [InlineData("\r=1+1", "'\r=1+1")]
    [InlineData("  =1+1", "'  =1+1")]
    [InlineData("=HYPERLINK(\"x\",\"y\")", "'=HYPERLINK(\"x\",\"y\")")]
    [InlineData("leg = long", "leg = long")]
    [InlineData("-2.5", "-2.5")]
    [InlineData("+3", "+3")]
    [InlineData("-1e3", "-1e3")]
    [InlineData("", "")]
    public void A_cell_that_a_spreadsheet_would_work_out_becomes_text_and_a_number_stays_one(string cell, string written) =>
        CsvText.Read(CsvText.Row(cell, "end"))[0][0].Text.Should().Be(written);

    [Fact]
    public void No_cell_of_a_written_row_is_a_formula() => Gen.String[Gen.Char["=+-@\t\r\n ,\"'1ae."], 0, 8].Array[1, 5].Sample(cells =>
        CsvText.Read(CsvText.Row([.. cells, "end"]))[0].Should().OnlyContain(field => !IsFormula(field.Text)));

    private static bool IsFormula(string cell) => cell.TrimStart(' ') is { Length: > 0 } start && "=+-@\t\r".Contains(start[0], StringComparison.Ordinal)
        && !double.TryParse(cell, System.Globalization.NumberStyles.Float, System.Globalization.CultureInfo.InvariantCulture, out _);
}
