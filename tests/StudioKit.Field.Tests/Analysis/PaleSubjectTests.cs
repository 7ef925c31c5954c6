using StudioKit.Field.Analysis;

namespace StudioKit.Field.Tests.Analysis;

/// <summary>Pale animals on a white sheet, some of them cut by the frame's edge: the truth is the shape that each picture was made with.</summary>
public sealed class PaleSubjectTests
{
    private const double Across = 0.24;
    private const double Down = 0.3;

    /// <summary>A pale moth in the lower right corner, a third to two thirds of a stop under a sheet that is all white: the sheet misses nothing.</summary>
    [Theory]
    [InlineData(0.5, -0.35, 0.1)]
    [InlineData(0.5, -0.35, 0)]
    [InlineData(0.5, -0.2, 0)]
    [InlineData(1.5, -0.7, 0.15)]
    public void A_pale_animal_in_a_corner_is_no_background(double sheet, double animal, double texture)
    {
        var frame = Analyse(Moth((_, _) => sheet, animal, texture, 0.93, 0.85));

        frame.StopsMissing.Should().Be(0, "only the animal is under clipping");
        frame.ClippedShare.Should().BeGreaterThan(0.99);
        frame.SubjectShare.Should().BeInRange(0.6 * Share(0.93, 0.85), Share(0.93, 0.85), "its outline is counted as neither");
        (frame.BackgroundShare + Share(0.93, 0.85)).Should().BeInRange(0.94, 1.001);
    }

    [Theory]
    [InlineData(0.5, 0.02)]
    [InlineData(0.02, 0.5)]
    [InlineData(0.5, 0.5)]
    public void A_pale_animal_on_a_sheet_just_under_clipping_is_no_background(double x, double y)
    {
        var frame = Analyse(Moth((u, v) => -0.2 - (0.4 * Square(u - 0.5)) - (0.4 * Square(v - 0.5)), -0.75, 0.08, x, y));

        frame.StopsMissing.Should().BeApproximately(0.39, 0.05, "the sheet's corners are 0.2 + 0.4/4 + 0.4/4 under");
        frame.SubjectShare.Should().BeInRange(0.6 * Share(x, y), Share(x, y));
    }

    /// <summary>A corner of the sheet that goes grey as smoothly as light falls off is background, and what it misses is told.</summary>
    [Fact]
    public void A_grey_corner_stays_background()
    {
        var frame = Analyse(new SensorModel(900, 600) { Margin = (u, v) => 0.5 - (2 * Math.Clamp((u + v - 1.2) / 0.8, 0, 1)), Subject = Spider });

        frame.StopsMissing.Should().BeApproximately(1.25, 0.05, "the darkest half percent is left out: from u + v = 1.9 on, two stops times 0.7/0.8 under");
        frame.Regions[8].StopsMissing.Should().BeGreaterThan(1.2);
        frame.DoubtfulShare.Should().BeLessThan(0.02);
    }

    /// <summary>Beyond the panel's edge, straight and aslant, it is dark: background too, which is not white.</summary>
    [Fact]
    public void What_lies_beyond_a_straight_edge_of_the_panel_is_background_that_is_not_white()
    {
        var frame = Analyse(new SensorModel(900, 600) { Margin = (u, v) => u + (0.3 * v) > 1.05 ? -3.5 : 0.6, Subject = Spider });

        frame.StopsMissing.Should().BeGreaterThan(3);
        frame.SubjectShare.Should().BeLessThan(0.08, "the spider alone");
    }

    [Fact]
    public void A_twig_across_the_frame_leaves_sheet_on_both_sides()
    {
        var frame = Analyse(new SensorModel(900, 600)
        {
            Margin = (u, v) => 0.3 - (0.8 * Square(u - 0.3)),
            Subject = (u, v) => Math.Abs(v - 0.4 - (0.2 * u)) < 0.05 ? 0.1 : null,
        });

        frame.BackgroundShare.Should().BeInRange(0.84, 0.91, "the twig covers a tenth, and its outline a little");
    }

    /// <summary>The gap between legs and the shining spot on a back look alike: what could be either is told.</summary>
    [Fact]
    public void A_white_patch_inside_the_animal_could_be_either()
    {
        var frame = Analyse(new SensorModel(900, 600)
        {
            Margin = (_, _) => 0.5,
            Subject = (u, v) => Square((u - 0.5) / 0.3) + Square((v - 0.5) / 0.3) is var at and < 1 && at > 0.15 ? 0.1 : null,
        });

        frame.DoubtfulShare.Should().BeInRange(0.015, Math.PI * 0.3 * 0.3 * 0.15, "the patch is a seventh of the animal, less its outline");
    }

    /// <summary>Thousands of even patches that are no sheet, as of pebbles, are no background.</summary>
    [Fact]
    public void A_frame_of_pebbles_is_doubted()
    {
        var pebbles = new SensorModel(1600, 1100) { Margin = (u, v) => ((int)(u * 50) + (3 * (int)(v * 34))) % 5 * -0.8 };

        Analyse(pebbles).Doubt.Should().NotBeNull();
    }

    /// <summary>Anywhere in the frame or half out of it, on white or just under: what is taken for background is the sheet, to a fiftieth of the frame, but for what is said to be doubtful.</summary>
    [Fact]
    public void Pale_animals_anywhere_are_no_background() =>
        Gen.Select(Gen.Double[0, 1], Gen.Double[0, 1], Gen.Double[0.25, 1.2], Gen.Double[0, 0.2], Gen.Double[-0.3, 2], Gen.Double[0, 0.6]).Sample(
            (x, y, darker, texture, sheet, fallOff) =>
            {
                double Sheet(double u, double v) => sheet - (fallOff * (Square(u - 0.5) + Square(v - 0.5)));
                var sensor = Moth(Sheet, Math.Min(0, sheet - fallOff) - darker, texture, x, y);
                var frame = Analyse(sensor);
                frame.Doubt.Should().BeNull();
                (frame.BackgroundShare - (1 - Share(x, y))).Should().BeInRange(-0.06, 0.02 + frame.DoubtfulShare, $"the sheet is {1 - Share(x, y):P0} of the frame");
            },
            iter: Math.Max(10, Hostile.DamagedText.Runs / 10),
            threads: 1);

    private static SensorModel Moth(Func<double, double, double> sheet, double animal, double texture, double x, double y) => new(900, 600)
    {
        Margin = sheet,
        Subject = (u, v) => Square((u - x) / Across) + Square((v - y) / Down) < 1 ? Math.Pow(2, animal + (texture * Math.Sin(900 * u) * Math.Sin(700 * v))) : null,
    };

    private static double? Spider(double u, double v) => Square((u - 0.4) / 0.14) + Square((v - 0.4) / 0.1) < 1 ? 0.04 + (0.1 * Square(Math.Sin(40 * u))) : null;

    // Share of the frame that the ellipse covers, counted.
    private static double Share(double x, double y) => Enumerable.Range(0, 300 * 200)
        .Count(i => Square(((((i % 300) + 0.5) / 300) - x) / Across) + Square(((((i / 300) + 0.5) / 200) - y) / Down) < 1) / (300.0 * 200);

    private static FrameAnalysis Analyse(SensorModel sensor) => TestFrame.Analyse(sensor.Expose()).Value!;

    private static double Square(double x) => x * x;
}
