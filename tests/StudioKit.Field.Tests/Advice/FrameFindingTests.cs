using StudioKit.Field.Advice;
using StudioKit.Field.Analysis;
using StudioKit.Physics.Exposure;
using UnitsNet;

namespace StudioKit.Field.Tests.Advice;

public sealed class FrameFindingTests
{
    private const double GlareIndex = 0.02;

    private static readonly BeneathFlash Flash = new(new FlashPower(1.0 / 8), new FlashPower(1.0 / 128), Length.FromCentimeters(25), Length.FromCentimeters(12));

    [Fact]
    public void A_white_frame_whose_dark_legs_are_dark_is_right()
    {
        var finding = Find(1.0 / 3);

        finding.Verdict.Should().Be(FrameVerdict.Right);
        finding.Next.Should().BeNull();
    }

    /// <summary>
    /// Glare of 2 % under a background 3 1/2 stops over clipping lays some 0.02·0.9·11.3 = 20 % of saturation over everything (ISO 9358 index, by
    /// superposition): the darkest part bounds the background from above by what such a veil asks for, which cannot be less than the truth.
    /// </summary>
    [Fact]
    public void A_frame_three_and_a_half_stops_over_does_not_read_like_a_good_one()
    {
        var finding = Find(3.5);

        finding.Verdict.Should().Be(FrameVerdict.WhiteUnbounded, "a pale subject would look the same");
        finding.LeastMargin.Should().Be(0);
        finding.MostMargin.Should().BeInRange(3.5, 4.2);
        finding.Next!.StopsLower.Should().Be(3, "more than three stops at once would sink what lies just over clipping");
        finding.Next.Mark!.Value.AsOneFraction.Should().Be("1/64");
    }

    [Fact]
    public void A_darker_frame_reads_what_the_finding_says_it_will()
    {
        var next = Find(2).Next!;

        var frame = Analyse(2 - next.StopsLower);

        next.ReadsTo.Should().BeGreaterThan(2);
        (next.StopsLower - frame.StopsMissing).Should().BeApproximately(2, 0.05, "that is how far over clipping the first frame was");
    }

    [Fact]
    public void A_white_frame_of_a_pale_subject_leaves_open_how_far_over_it_is()
    {
        var finding = FrameFinding.Of(Analyse(1.0 / 3, own: 0.12), new FrameLimits { Flash = Flash, GlareIndex = GlareIndex });

        finding.Verdict.Should().Be(FrameVerdict.WhiteUnbounded);
        finding.Next.Should().NotBeNull();
    }

    /// <summary>A pale moth under a right light has nothing dark on it: it is not called too bright for that.</summary>
    [Fact]
    public void A_pale_moth_is_not_called_too_bright() =>
        FrameFinding.Of(Analyse(1.0 / 3, own: 0.35, bright: 0.5), new FrameLimits { Flash = Flash, GlareIndex = GlareIndex }).Verdict.Should().Be(FrameVerdict.WhiteUnbounded);

    [Fact]
    public void A_subject_that_is_white_itself_is_too_bright() =>
        FrameFinding.Of(Analyse(0.3, own: 0.03, bright: 1.6), new FrameLimits { Flash = Flash, GlareIndex = GlareIndex }).Verdict.Should().Be(FrameVerdict.TooBright);

    [Fact]
    public void A_bare_white_panel_shows_only_that_it_is_not_under_clipping()
    {
        var finding = FrameFinding.Of(TestFrame.AnalyseBarePanel(new SensorModel(240, 160) { Margin = (_, _) => 5 }.Expose()).Value!, new FrameLimits { Flash = Flash with { Power = new FlashPower(1.0 / 64) } });

        finding.Verdict.Should().Be(FrameVerdict.WhiteUnbounded);
        (finding.LeastMargin, finding.MostMargin).Should().Be((0, null));
        finding.Next!.Mark.Should().BeNull("three stops under 1/64 its dial does not go");
    }

    [Fact]
    public void A_region_is_not_white_only_where_more_than_half_a_percent_of_it_is_not()
    {
        // A scratch three blocks wide, a stop under: some three in a thousand of the middle ninth.
        var frame = TestFrame.AnalyseBarePanel(new SensorModel(900, 600) { Margin = (u, v) => Math.Abs(u - 0.5) < 0.007 && Math.Abs(v - 0.5) < 0.007 ? -1 : 1 }.Expose()).Value!;

        frame.StopsMissing.Should().Be(0);
        frame.Regions.Should().OnlyContain(region => region.StopsMissing == 0);
        frame.ClippedShare.Should().BeLessThan(1);
    }

    private static FrameFinding Find(double margin) => FrameFinding.Of(Analyse(margin), new FrameLimits { Flash = Flash, GlareIndex = GlareIndex });

    // A dark spider with a bright back, in stripes where it shines; the veil of the background lies over all of it.
    private static FrameAnalysis Analyse(double margin, double own = 0.03, double bright = 0.2)
    {
        var veil = GlareIndex * 0.93 * Math.Pow(2, margin);
        return TestFrame.Analyse(new SensorModel(900, 600)
        {
            Margin = (_, _) => margin,
            Subject = (u, v) => Square((u - 0.5) / 0.18) + Square((v - 0.5) / 0.12) is var at and < 1 ? veil + (at < 0.4 && (bright < 1 || (int)(u * 450) % 2 == 0) ? bright : own) : null,
        }.Expose()).Value!;
    }

    private static double Square(double x) => x * x;
}
