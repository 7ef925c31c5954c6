using StudioKit.Physics.Light;
using StudioKit.Physics.Light.Checks;
using UnitsNet;

namespace StudioKit.Physics.Tests.Light;

public sealed class SceneCheckTests
{
    [Fact]
    public void A_sound_studio_has_no_problems() => Kinds(Studio.Flash()).Should().BeEmpty();

    [Fact]
    public void A_flash_above_the_sheet_is_named() => Kinds(Studio.Flash(z: 0.6)).Should().Equal(LightProblemKind.AboveSheet);

    [Fact]
    public void A_flash_in_the_ground_is_named() => Kinds(Studio.Flash(z: -0.01)).Should().Equal(LightProblemKind.InsideFloor);

    [Fact]
    public void A_tilted_window_that_dips_into_the_ground_is_named()
    {
        var flash = Studio.Flash(z: 0.02, size: 0.08) with { Orientation = Orientation.Tilted(Angle.FromDegrees(60), Angle.Zero) };

        Kinds(flash).Should().Equal(LightProblemKind.InsideFloor);
    }

    [Fact]
    public void A_flash_through_a_skirt_is_named() => Kinds(Studio.Flash(x: 0.29)).Should().Equal(LightProblemKind.OutsideSkirts);

    /// <summary>By the studio's measures: the sheet 500 mm up and 600 mm wide, a window 50 mm wide.</summary>
    [Fact]
    public void A_flash_that_reaches_too_far_says_by_how_much()
    {
        double By(Emitter flash) => SceneCheck.Problems(Studio.Scene(Studio.Panel(), Studio.WhiteSkirts, flash)).Single().By!.Value.Millimeters;

        By(Studio.Flash(z: 0.6)).Should().BeApproximately(100, 1e-9);
        By(Studio.Flash(z: -0.01)).Should().BeApproximately(10, 1e-9);
        By(Studio.Flash(x: 0.29)).Should().BeApproximately(15, 1e-9, "290 + 25 − 300 mm");
        By(Studio.Flash(y: -0.24)).Should().BeApproximately(40, 1e-9, "240 + 25 − 225 mm");
    }

    [Fact]
    public void A_flash_aimed_away_is_named()
    {
        var flash = Studio.Flash() with { Orientation = Orientation.Tilted(Angle.FromDegrees(180), Angle.Zero) };

        Kinds(flash).Should().Equal(LightProblemKind.AimedAway);
    }

    [Fact]
    public void A_window_without_area_is_named() =>
        Kinds(Studio.Flash() with { Width = Length.Zero }).Should().Equal(LightProblemKind.NoExtent);

    [Fact]
    public void A_studio_without_a_flash_is_named() => Kinds().Should().Equal(LightProblemKind.NoFlash);

    [Fact]
    public void All_faults_of_a_panel_are_named_at_once() =>
        SceneCheck.Problems(Studio.Scene(Studio.Panel(width: 0, reflectance: 1.2) with { Transmittance = double.NaN }, Studio.WhiteSkirts, Studio.Flash()))
            .Select(problem => problem.Kind).Should().Equal(LightProblemKind.NoExtent, LightProblemKind.OutOfRange, LightProblemKind.OutOfRange);

    [Fact]
    public void A_sweep_longer_than_the_sheet_is_named()
    {
        var panel = Studio.Panel() with { SweepRadius = Length.FromMeters(1), SweptLength = Length.FromMeters(0.5) };

        SceneCheck.Problems(Studio.Scene(panel, Studio.WhiteSkirts, Studio.Flash())).Select(problem => problem.Kind)
            .Should().Equal(LightProblemKind.ImpossibleSweep);
    }

    [Fact]
    public void A_subject_off_the_panel_and_a_camera_under_it_are_named()
    {
        var view = new CameraView
        {
            Name = "moth",
            FieldWidth = Length.FromMillimeters(36),
            FieldHeight = Length.FromMillimeters(24),
            PupilDistance = Length.FromMillimeters(300),
            Pitch = Angle.FromDegrees(-5),
            SubjectRight = Length.FromMeters(0.4),
        };

        SceneCheck.Problems(Studio.Scene(Studio.Panel(), Studio.WhiteSkirts, Studio.Flash()), [view]).Select(problem => problem.Kind)
            .Should().Equal(LightProblemKind.CameraBelowPanel, LightProblemKind.SubjectOffPanel);
    }

    [Fact]
    public void Solving_an_impossible_studio_throws_with_the_same_problem()
    {
        var solve = () => LightSolver.Solve(Studio.Scene(Studio.Panel(), Studio.WhiteSkirts, Studio.Flash(z: 0.6)), new PanelGrid(2, 2));

        solve.Should().Throw<ArgumentException>().WithMessage("*Kind = AboveSheet*Flash = 1*");
    }

    private static IEnumerable<LightProblemKind> Kinds(params Emitter[] emitters) =>
        SceneCheck.Problems(Studio.Scene(Studio.Panel(), Studio.WhiteSkirts, emitters)).Select(problem => problem.Kind);
}
