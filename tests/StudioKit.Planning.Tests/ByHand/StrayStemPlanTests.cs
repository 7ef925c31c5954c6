namespace StudioKit.Planning.Tests.ByHand;

/// <summary>Stems between a plant and the sheet behind it, worked out on paper: half life size at an effective f/24, so a pencil is 1/48 of its distance wide.</summary>
public sealed class StrayStemPlanTests
{
    [Fact]
    public void The_widest_stem_that_vanishes_leaves_the_darkest_corner_just_white()
    {
        var exposure = UprightKit.Exposure();
        var stems = exposure.StrayStems!;

        exposure.EffectiveAperture.Value.Should().BeApproximately(24, 1e-3);
        stems.ToSheet.Millimeters.Should().BeApproximately(50, 1e-6);
        Blocked(stems.WidestHalfWay.Millimeters / (25.0 / 48)).Should().BeApproximately(1 - Math.Pow(2, -exposure.WhiteMargin!.Value.Value), 1e-4);
        (stems.WidestAtSheet / stems.WidestHalfWay).Should().BeApproximately(2, 1e-9, "the pencil is twice as wide there");
    }

    [Fact]
    public void Stems_are_listed_with_the_distance_from_which_on_they_vanish()
    {
        var stems = UprightKit.Exposure("width: 400 mm, height: 400 mm", "background-distance: 15 cm").StrayStems!;

        stems.Stems.Select(stem => stem.Width.Millimeters).Should().Equal(0.5, 1, 2);
        foreach (var stem in stems.Stems)
        {
            var from = stems.ToSheet * (stem.Width / stems.WidestAtSheet);
            stem.From?.Millimeters.Should().BeApproximately(from.Millimeters, 1e-6);
            (stem.From is null).Should().Be(from > stems.ToSheet);
        }

        stems.Stems[0].From.Should().NotBeNull();
        stems.Stems[2].From.Should().BeNull("the pencil right before the sheet is 3 mm wide, and half of that may not be blocked");
    }

    // 72 mm × 48 mm at half life size from a pupil f·(1/m + 1/p) = 180 mm away: at 50 mm behind 72·(1 + 50/180) = 92 mm and 61.3 mm, and half a pencil of 50/48 = 1.04 mm on either side.
    [Fact]
    public void Room_to_be_clear_is_the_cone_that_the_camera_looks_through()
    {
        var exposure = UprightKit.Exposure();
        var wider = 1 + (50 / exposure.Framing.SubjectToEntrancePupil.Millimeters);

        exposure.StrayStems!.ClearWidth!.Value.Millimeters.Should().BeApproximately((72 * wider) + (50.0 / 48), 0.01);
        exposure.StrayStems.ClearHeight!.Value.Millimeters.Should().BeApproximately((48 * wider) + (50.0 / 48), 0.01);
    }

    [Fact]
    public void A_camera_held_on_edge_looks_through_a_high_room()
    {
        var lying = UprightKit.Exposure().StrayStems!;
        var onEdge = UprightKit.Exposure(setUp: "background-distance: 5 cm; camera-roll: 90°").StrayStems!;

        onEdge.ClearHeight!.Value.Millimeters.Should().BeApproximately(lying.ClearWidth!.Value.Millimeters, 1e-6);
        onEdge.ClearWidth!.Value.Millimeters.Should().BeApproximately(lying.ClearHeight!.Value.Millimeters, 1e-6);
    }

    // Two angles look at two places of the sheet: level and 10° down, 50 mm·tan 10° = 9 mm apart and a little more.
    [Fact]
    public void Room_of_several_camera_angles_holds_them_all()
    {
        var one = UprightKit.Exposure("width: 400 mm, height: 400 mm").StrayStems!;
        var two = KitText.Plan(UprightKit.Of("width: 400 mm, height: 400 mm").Replace("camera-pitch: 0°", "camera-pitch: [0°, 10°]", StringComparison.Ordinal)).Exposures.Single().StrayStems!;

        two.ToSheet.Millimeters.Should().BeApproximately(50, 1e-6, "the nearest part of the sheet counts, before which the pencil is narrowest");
        (two.ClearHeight - one.ClearHeight)!.Value.Millimeters.Should().BeInRange(9, 16);
    }

    [Fact]
    public void A_plant_where_it_grows_is_looked_past_before_anything_is_tested() =>
        UprightKit.Exposure().TestSteps.Should().StartWith(TestStep.LookThrough);

    [Fact]
    public void Without_a_sheet_behind_there_are_no_stems_to_tell_of()
    {
        var flat = HandKit.Plan(HandKit.White, panel: "width: 400 mm, depth: 400 mm").Exposures.Single();

        flat.StrayStems.Should().BeNull();
        flat.TestSteps.Should().NotContain(TestStep.LookThrough);
    }

    // Area of a strip across a disc, chord by chord.
    private static double Blocked(double share)
    {
        const int steps = 20_000;
        return Enumerable.Range(0, steps).Sum(i => Math.Sqrt(1 - Math.Pow(((2 * (i + 0.5) / steps) - 1) * share, 2))) * 4 * share / steps / Math.PI;
    }
}
