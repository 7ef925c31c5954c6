using StudioKit.Planning.Checks;

namespace StudioKit.Planning.Tests.ByHand;

/// <summary>The panel behind a frame, by plain trigonometry.</summary>
/// <remarks>
/// Half life size of a 36 mm × 24 mm sensor is 72 mm × 48 mm at the subject; a 60 mm lens with equal pupils looks from f·(1 + 1/m) = 180 mm. Looking down
/// by φ, the frame's upper and lower edge lie α = atan(½·height/180 mm) beside the line of sight and meet the sheet at H·cot(φ ∓ α), H = 180 mm·sin φ. The
/// far edge is seen by t = sin φ/(sin φ − tan α·cos φ) wider than the aim. A margin of 30 mm all round comes on top, then up to the next centimetre:
/// a panel a millimetre too small shows its edge, one that is larger shows nothing.
/// </remarks>
public sealed class PanelSizeTests
{
    // 90°: 72 + 60 = 132, 48 + 60 = 108. Upright 48 + 60 = 108 and 72 + 60 = 132.
    // 60°: α = 7.595°, H = 155.88; depth 155.88·(cot 52.405° − cot 67.595°) = 55.8, + 60 = 115.8; t = 1.0834, 78.0 + 60 = 138.0.
    // 60° upright: α = 11.310°; 155.88·(cot 48.690° − cot 71.310°) = 84.3, + 60 = 144.3; t = 1.1305, 54.3 + 60 = 114.3.
    [Theory]
    [InlineData("90°", "0°", 140, 110)]
    [InlineData("90°", "90°", 110, 140)]
    [InlineData("60°", "0°", 140, 120)]
    [InlineData("60°", "90°", 120, 150)]
    [InlineData("60°", "-90°", 120, 150)]
    [InlineData("60°", "[0°, 90°]", 140, 150)]
    public void The_panel_fills_the_frame_and_is_cut_to_the_next_centimetre_up(string pitch, string roll, double width, double depth)
    {
        var panel = HandKit.Plan(HandKit.White.Replace("camera-pitch: 90°", $"camera-pitch: {pitch}\n    camera-roll: {roll}", StringComparison.Ordinal)).Panel;

        panel.RequiredWidth.Millimeters.Should().BeApproximately(width, 1e-6);
        panel.RequiredDepth.Millimeters.Should().BeApproximately(depth, 1e-6);
        (panel.Width, panel.Depth).Should().Be((panel.RequiredWidth, panel.RequiredDepth));
    }

    // 132 mm are needed, 140 mm asked for.
    [Theory]
    [InlineData(139, 150, false)]
    [InlineData(150, 109, false)]
    [InlineData(140, 110, true)]
    public void A_panel_on_hand_that_is_smaller_either_way_fails_its_check(double width, double depth, bool enough)
    {
        var plan = HandKit.Plan(HandKit.White, panel: FormattableString.Invariant($"width: {width} mm, depth: {depth} mm"));

        plan.Checks.Single(check => check.Kind == PlanCheckKind.PanelSize).Passed.Should().Be(enough);
    }
}
