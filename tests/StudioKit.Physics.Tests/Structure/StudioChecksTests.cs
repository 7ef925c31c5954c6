using StudioKit.Physics.Sources;
using StudioKit.Physics.Structure;
using StudioKit.Physics.Structure.Frames;
using StudioKit.Physics.Tests.Structure.Frames;
using UnitsNet;

namespace StudioKit.Physics.Tests.Structure;

public sealed class StudioChecksTests
{
    private static readonly StudioCheckCase Fen = StudioCases.Fen;

    [Fact]
    public void Every_check_names_a_source_of_the_bibliography_and_a_ratio()
    {
        var checks = StudioChecks.All(Fen);

        checks.Should().OnlyContain(check => Bibliography.Entries.ContainsKey(check.SourceKey));
        checks.Should().OnlyContain(check => double.IsFinite(check.Ratio) && check.Ratio >= 0);
        checks.Select(check => check.Kind).Should().OnlyHaveUniqueItems();
        checks.Should().OnlyContain(check => !check.Holds || check.Remedy == null);
    }

    /// <summary>Beam table of Gere and Goodno (2009), worked by hand.</summary>
    /// <remarks>Panel 8.402 N and subject 1.961 N, half of each over 0.58 m, make 8.934 N/m; the pipe's own weight adds 1.197 N/m.</remarks>
    [Fact]
    public void Rail_sag_follows_the_beam_table()
    {
        var cool = Fen with { Air = Temperature.FromDegreesCelsius(10), SunWarming = TemperatureDelta.Zero };

        var check = StudioChecks.All(cool).Single(found => found.Kind == StructuralCheckKind.RailSag);

        ((Length)check.Demand).Millimeters.Should().BeApproximately(5 * 10.131 * Math.Pow(0.58, 4) / (384 * 2.9e9 * 3.754e-9) * 1000, 0.005);
    }

    [Fact]
    public void Rails_looked_at_alone_fare_as_among_all_checks()
    {
        var alone = StudioChecks.OfRails(Fen);

        alone.Select(check => (check.Kind, check.Ratio)).Should().Equal(
            StudioChecks.All(Fen).Where(check => check.Kind is StructuralCheckKind.RailSag or StructuralCheckKind.RailStress).Select(check => (check.Kind, check.Ratio)));
    }

    [Fact]
    public void Stretchers_keep_legs_from_buckling()
    {
        var tied = Fen with { Frame = PipeFrame.Generate(FrameCases.FenTable with { Stretchers = FrameStretchers.Always }) };

        double Ratio(StudioCheckCase studio) => StudioChecks.All(studio).Single(check => check.Kind == StructuralCheckKind.LegBuckling).Ratio;

        Ratio(tied).Should().BeLessThan(Ratio(Fen) / 2);
    }

    [Fact]
    public void A_gale_tips_the_table_and_the_check_names_ballast()
    {
        var gale = StudioChecks.All(Fen with { Gust = Speed.FromMetersPerSecond(20) }).Single(check => check.Kind == StructuralCheckKind.Tipping);

        gale.Holds.Should().BeFalse();
        gale.Remedy!.Ballast!.UnderMiddle.Should().BeGreaterThan(Mass.Zero);
        gale.Remedy.Ballast.OnWindwardFeet!.Value.Should().BeLessThan(gale.Remedy.Ballast.UnderMiddle, "the windward feet have the whole base for a lever, the middle half of it");
    }

    [Fact]
    public void A_swept_back_catches_more_wind()
    {
        var design = FrameCases.FenTable with { Shape = FrameShape.SweptTable, SweepRadius = Length.FromMillimeters(500) };
        var swept = Fen with { Frame = PipeFrame.Generate(design), SweepRadius = design.SweepRadius };

        Force Push(StudioCheckCase studio) => (Force)StudioChecks.All(studio).Single(check => check.Kind == StructuralCheckKind.Sliding).Demand;

        Push(swept).Should().BeGreaterThan(2 * Push(Fen));
        StudioChecks.All(swept).Single(check => check.Kind == StructuralCheckKind.SweepBentCold).Holds.Should().BeFalse();
    }

    [Fact]
    public void Pipe_too_hot_for_pvc_is_a_check_that_fails()
    {
        var hot = StudioChecks.All(Fen with { Air = Temperature.FromDegreesCelsius(45), SunWarming = TemperatureDelta.FromDegreesCelsius(20) });

        hot.Single(check => check.Kind == StructuralCheckKind.PipeWarmth).Holds.Should().BeFalse();
    }

    [Fact]
    public void Stronger_wind_never_makes_a_studio_safer() =>
        Gen.Select(Gen.Double[0, 30], Gen.Double[0, 30]).Sample(
            (one, other) =>
            {
                double Ratio(double gust) => StudioChecks.All(Fen with { Gust = Speed.FromMetersPerSecond(gust) })
                    .Single(check => check.Kind == StructuralCheckKind.Tipping).Ratio;
                return Ratio(Math.Min(one, other)) <= Ratio(Math.Max(one, other)) + 1e-12;
            },
            iter: 10);

    [Fact]
    public void The_ballast_that_a_failing_check_names_makes_it_hold()
    {
        StructuralCheck Tipping(StudioCheckCase studio) => StudioChecks.All(studio).Single(check => check.Kind == StructuralCheckKind.Tipping);
        var windy = Fen with { Gust = Speed.FromMetersPerSecond(12), SkirtHeight = Length.FromMillimeters(500) };
        var kilograms = Tipping(windy).Remedy!.Ballast!.UnderMiddle.Kilograms;

        kilograms.Should().BePositive();
        Tipping(windy with { Ballast = Mass.FromKilograms(kilograms) }).Holds.Should().BeTrue();
        Tipping(windy with { Ballast = Mass.FromKilograms(kilograms - 0.2) }).Holds.Should().BeFalse();
    }

    [Fact]
    public void The_ballast_that_a_sliding_studio_needs_makes_it_stay_and_comes_on_top_of_what_hangs()
    {
        StructuralCheck Sliding(StudioCheckCase studio) => StudioChecks.All(studio).Single(check => check.Kind == StructuralCheckKind.Sliding);
        var windy = Fen with { Gust = Speed.FromMetersPerSecond(12), SkirtHeight = Length.FromMillimeters(500), Ballast = Mass.FromKilograms(1) };
        var need = Sliding(windy).Remedy!.Ballast!;

        need.Hung.Should().Be(windy.Ballast);
        need.OnWindwardFeet.Should().BeNull("grip counts the whole weight, wherever it stands");
        (need.UnderMiddle.Kilograms * 10 % 1).Should().BeApproximately(0, 1e-9, "a person weighs ballast to a tenth of a kilogram");
        Sliding(windy with { Ballast = windy.Ballast + need.UnderMiddle }).Holds.Should().BeTrue();
        Sliding(windy with { Ballast = windy.Ballast + need.UnderMiddle - Mass.FromKilograms(0.2) }).Holds.Should().BeFalse();
    }

    [Fact]
    public void A_sheet_with_the_room_at_its_edges_that_the_check_names_can_grow()
    {
        StructuralCheck Growth(Length room) =>
            StudioChecks.All(Fen with { PanelWidth = Length.FromMeters(1.2), SunWarming = TemperatureDelta.FromDegreesCelsius(40), Frame = PipeFrame.Generate(FrameCases.FenTable with { EdgeClearance = room }) })
                .Single(check => check.Kind == StructuralCheckKind.SheetGrowth);
        var named = Growth(Length.FromMillimeters(0.1)).Remedy!.Size!.Value;

        Growth(named).Holds.Should().BeTrue();
        Growth(named - Length.FromMillimeters(0.51)).Holds.Should().BeFalse("it is rounded up to the next half millimetre");
    }

    [Fact]
    public void Pegs_in_the_ground_keep_a_light_studio_from_sliding()
    {
        bool Slides(StudioCheckCase studio) => !StudioChecks.All(studio).Single(check => check.Kind == StructuralCheckKind.Sliding).Holds;
        var windy = Fen with { Gust = Speed.FromMetersPerSecond(9), SkirtHeight = Length.FromMillimeters(500) };

        Slides(windy).Should().BeTrue();
        Slides(windy with { Pegs = 4, PegHold = Force.FromNewtons(60) }).Should().BeFalse();
    }

    [Fact]
    public void A_leg_under_the_middle_shortens_the_longest_span_of_the_side_rails()
    {
        var design = FrameCases.FenTable with { PanelWidth = Length.FromMillimeters(400), PanelDepth = Length.FromMillimeters(900) };
        double Sag(bool middle) => StudioChecks.All(Fen with { Frame = PipeFrame.Generate(design with { MiddleLegs = middle }), PanelWidth = design.PanelWidth, PanelDepth = design.PanelDepth })
            .Single(check => check.Kind == StructuralCheckKind.RailSag).Demand.As(UnitsNet.Units.LengthUnit.Millimeter);

        Sag(middle: true).Should().BeLessThan(Sag(middle: false) / 4);
    }
}
