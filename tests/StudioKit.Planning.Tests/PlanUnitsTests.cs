using StudioKit.Kits;
using StudioKit.Physics;
using UnitsNet;

namespace StudioKit.Planning.Tests;

public sealed class PlanUnitsTests
{
    private static readonly WrittenLengths Written = WrittenLengths.Of(new ValueDictionary<string>([
        new("panel.width", "24 in"), new("stock.lengths[0].length", "8 ft"), new("frame.height", "45 cm"), new("panel.thickness", "1/8 in ± 0.2 mm"), new("flashes[0].body", "8 x 3 x 2 in"), new("name", "bog inn, 3 m from the path"),
    ]));

    [Fact]
    public void What_the_kit_gives_in_inches_is_said_as_the_kit_has_it()
    {
        var told = new PlanUnits(TextUnits.Metric, Written).Tell(() => new[]
        {
            PlanFormat.Millimetres(Length.FromInches(24)), PlanFormat.Millimetres(Length.FromFeet(8)), PlanFormat.Millimetres(Length.FromInches(0.125)), PlanFormat.Millimetres(Length.FromInches(3)),
            PlanFormat.Millimetres(Length.FromCentimeters(45)), PlanFormat.Rectangle(Length.FromInches(24), Length.FromMillimeters(400)),
        });
        told.Should().Equal("24 in (610 mm)", "8 ft (2438 mm)", "1/8 in (3.18 mm)", "3 in (76.2 mm)", "450 mm", "24 in × 15 3/4 in (610 × 400 mm)");
        new PlanUnits(TextUnits.Inches, Written).Tell(() => PlanFormat.Millimetres(Length.FromFeet(8))).Should().Be("8 ft");
    }

    [Theory]
    [InlineData(TextUnits.Metric, "600 mm", "45 cm", "1.12 kg", "802 mm ± 27 mm", "44.5 mm")]
    [InlineData(TextUnits.Inches, "23 5/8 in", "17 3/4 in", "2 lb 8 oz", "31.6 in ± 1.1 in", "1 3/4 in")]
    [InlineData(TextUnits.Both, "600 mm (23 5/8 in)", "45 cm (17 3/4 in)", "1.12 kg (2 lb 8 oz)", "802 mm ± 27 mm (31.6 in ± 1.1 in)", "44.5 mm (1 3/4 in)")]
    public void A_scope_tells_everything_in_its_units(TextUnits units, string length, string byHand, string mass, string unsure, string cut) => new PlanUnits(units, WrittenLengths.None).Tell(() => new[]
    {
        PlanFormat.Millimetres(Length.FromMillimeters(600)), DistanceFormat.Centimetres(Length.FromCentimeters(45.1)), MeasureFormat.Mass(Mass.FromGrams(1120)),
        PlanFormat.GiveOrTake(Length.FromMillimeters(802), Length.FromMillimeters(27)), CutFormat.CutLength(Length.FromMillimeters(44.4)),
    }).Should().Equal(length, byHand, mass, unsure, cut);

    [Fact]
    public void A_scope_ends_where_it_ends()
    {
        var inner = new PlanUnits(TextUnits.Inches, WrittenLengths.None);
        var outer = new PlanUnits(TextUnits.Both, WrittenLengths.None);
        outer.Tell(() => (inner.Tell(() => PlanUnits.Current.Units), PlanUnits.Current.Units)).Should().Be((TextUnits.Inches, TextUnits.Both));
        var failing = () => inner.Tell<int>(() => throw new InvalidOperationException());
        failing.Should().Throw<InvalidOperationException>();
        PlanUnits.Current.Should().Be(PlanUnits.Metric);
    }

    [Theory]
    [InlineData(8.824, "8.8 mm")]
    [InlineData(0.5784, "0.58 mm")]
    [InlineData(107.2, "110 mm")]
    public void What_is_worked_out_roughly_is_said_to_two_digits(double millimetres, string text) => PlanFormat.RoughMillimetres(Length.FromMillimeters(millimetres)).Should().Be(text);
}
