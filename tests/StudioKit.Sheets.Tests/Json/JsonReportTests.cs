using System.Text.Json;
using StudioKit.Physics.Exposure;
using StudioKit.Sheets.Json;
using UnitsNet;

namespace StudioKit.Sheets.Tests.Json;

public sealed class JsonReportTests
{
    // 1 in = 25.4 mm and 1 lb = 453.59237 g by definition (international yard and pound, 1959).
    [Fact]
    public void A_key_ends_in_the_unit_that_its_number_has()
    {
        var root = Read(json => json
            .Millimetres("width", Length.FromInches(10))
            .Micrometres("blur", Length.FromMillimeters(0.0429))
            .Grams("mass", Mass.FromPounds(1))
            .Grams("", Mass.FromKilograms(2))
            .Stops("margin", new Stops(0.5)));

        root.EnumerateObject().Select(property => (property.Name, property.Value.GetDouble()))
            .Should().Equal(("widthMm", 254), ("blurUm", 42.9), ("massG", 453.5924), ("massG", 2000), ("marginStops", 0.5));
    }

    [Theory]
    [InlineData(Math.PI, 3.141593)]
    [InlineData(-123456.789, -123456.8)]
    [InlineData(0.00012345678, 0.0001234568)]
    [InlineData(0, 0)]
    public void A_number_keeps_seven_significant_digits(double value, double printed) =>
        Read(json => json.Number("n", value)).GetProperty("n").GetDouble().Should().Be(printed);

    [Theory]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    public void What_is_no_number_is_null(double value)
    {
        var root = Read(json => json.Number("n", value).Numbers("list", [1, value]).Millimetres("width", null).Text("word", null).Amount("price", null));

        root.EnumerateObject().Where(property => property.Name != "list").Should().OnlyContain(property => property.Value.ValueKind == JsonValueKind.Null);
        root.GetProperty("list")[1].ValueKind.Should().Be(JsonValueKind.Null);
    }

    [Fact]
    public void Money_is_not_rounded() =>
        Read(json => json.Amount("price", 1234567.89m)).GetProperty("price").GetDecimal().Should().Be(1234567.89m);

    /// <summary>The reference is the document of the same items, each list made by itself and held whole.</summary>
    [Fact]
    public void A_long_list_is_written_a_portion_at_a_time_and_is_the_same_document()
    {
        using var seen = new Portions();
        JsonReport.WriteLine(seen, json => json.List("moths", Enumerable.Range(0, 3000), number => json.Text("name", $"蛾 {number}").Number("sizeMm", number / 7.0)).Text("place", "fen"));

        var read = JsonDocument.Parse(seen.ToString()).RootElement;
        read.GetProperty("moths").EnumerateArray().Select(moth => moth.GetProperty("name").GetString()).Should().Equal(Enumerable.Range(0, 3000).Select(number => $"蛾 {number}"));
        read.GetProperty("place").GetString().Should().Be("fen");
        seen.ToString().Should().EndWith("}" + Environment.NewLine);
        seen.Longest.Should().BeLessThan(50_000, "a portion is closed by the item that fills it");
    }

    private static JsonElement Read(Action<JsonReport> fill) => JsonDocument.Parse(JsonReport.Document(fill)).RootElement;

    private sealed class Portions : StringWriter
    {
        public int Longest { get; private set; }

        public override void Write(string? value)
        {
            Longest = Math.Max(Longest, value?.Length ?? 0);
            base.Write(value);
        }
    }
}
