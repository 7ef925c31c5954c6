using StudioKit.Physics.Light;
using StudioKit.Physics.Light.Views;
using UnitsNet;

namespace StudioKit.Physics.Tests.Light;

public sealed class PanelCoverageTests
{
    private static readonly Length Margin = Length.FromMillimeters(30);
    private static readonly Length Deepest = Length.FromMeters(1.2);
    private static readonly Length ColdBend = Length.FromMeters(0.99);

    [Fact]
    public void Looking_straight_down_the_panel_is_the_field_and_its_margin()
    {
        var panel = Cover(View(90));

        panel.Width.Millimeters.Should().BeApproximately(36 + 60, 1e-9);
        panel.Depth.Millimeters.Should().BeApproximately(24 + 60, 1e-9);
        panel.SubjectFromFront.Millimeters.Should().BeApproximately(42, 1e-9);
        panel.SubjectFromLeft.Millimeters.Should().BeApproximately(48, 1e-9);
        panel.NeedsSweep.Should().BeFalse();
    }

    /// <summary>By hand: the top ray meets the sheet at −run + rise/tan(30° − atan(12/300)) behind the foot.</summary>
    [Fact]
    public void A_low_pitch_asks_for_depth_behind_the_subject()
    {
        var panel = Cover(View(30));

        var back = -(300 * Math.Cos(Math.PI / 6)) + (150 / Math.Tan((Math.PI / 6) - Math.Atan2(12, 300)));
        (panel.Depth - panel.SubjectFromFront).Millimeters.Should().BeApproximately(back + 30, 1e-6);
    }

    [Fact]
    public void A_view_over_the_horizon_asks_for_a_sweep_no_tighter_than_the_sheet_bends_cold()
    {
        var panel = Cover(View(60), View(1));

        panel.NeedsSweep.Should().BeTrue();
        panel.SweepRadius!.Value.Should().Be(ColdBend);
        panel.SweptLength.Should().BeGreaterThan(Length.Zero);
        panel.Caveats.Should().ContainSingle().Which.Should().Contain("990 mm");
    }

    [Fact]
    public void The_swept_panel_it_designs_fills_every_frame()
    {
        CameraView[] views = [View(60), View(10), View(3)];
        var found = Cover(views);
        var panel = new LightPanel
        {
            Width = found.Width,
            Depth = found.Depth,
            Height = Length.FromMeters(0.4),
            SweepRadius = found.SweepRadius,
            SweptLength = found.SweptLength,
        };
        var back = found.SubjectFromFront - (found.Depth / 2);

        views.Should().AllSatisfy(view => VisiblePatch.Of(panel, view with { SubjectBack = back }).OnPanel.Should().Be(1));
    }

    [Fact]
    public void The_flat_panel_it_designs_fills_every_frame_and_none_smaller_does() =>
        Gen.Double[35, 90].Select(Gen.Double[20, 120], Gen.Double[-30, 30]).Sample(
            (pitch, width, roll) =>
            {
                var view = View(pitch) with { FieldWidth = Length.FromMillimeters(width), FieldHeight = Length.FromMillimeters(width / 1.5), Roll = Angle.FromDegrees(roll) };
                var found = PanelCoverage.Smallest([view], Length.FromMillimeters(0.001), Length.FromMeters(5), ColdBend, Length.Zero);
                var placed = view with
                {
                    SubjectBack = found.SubjectFromFront - (found.Depth / 2),
                    SubjectRight = found.SubjectFromLeft - (found.Width / 2),
                };
                bool Misses(Length width, Length depth) => VisiblePatch.Of(
                    new LightPanel { Width = width, Depth = depth, Height = Length.FromMeters(0.4) }, placed).OnPanel < 1;
                return !Misses(found.Width, found.Depth) && Misses(found.Width * 0.99, found.Depth) && Misses(found.Width, found.Depth * 0.99);
            },
            iter: 30);

    [Fact]
    public void No_view_is_refused()
    {
        var cover = () => Cover();

        cover.Should().Throw<ArgumentException>().WithParameterName("views");
    }

    private static PanelCoverageResult Cover(params CameraView[] views) =>
        PanelCoverage.Smallest(views, Margin, Deepest, ColdBend, Length.FromMillimeters(50));

    private static CameraView View(double pitch) => new()
    {
        Name = "view",
        FieldWidth = Length.FromMillimeters(36),
        FieldHeight = Length.FromMillimeters(24),
        PupilDistance = Length.FromMillimeters(300),
        Pitch = Angle.FromDegrees(pitch),
    };
}
