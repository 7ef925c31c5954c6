using StudioKit.Physics.Light;
using StudioKit.Physics.Light.Checks;
using StudioKit.Physics.Light.Views;
using UnitsNet;

namespace StudioKit.Physics.Tests.Light;

/// <summary>A sheet that stands upright on the ground, worked out lying on its back.</summary>
public sealed class UprightSheetTests
{
    private static readonly LightPanel Sheet = Studio.Panel(width: 0.4, depth: 0.5, height: 0.6, reflectance: 0.35);

    private static GroundBeside Ground(double reflectance, double under = 0.03, double lean = 0) => new()
    {
        Reflectance = reflectance,
        Under = Length.FromMeters(under),
        Lean = Angle.FromDegrees(lean),
        Beyond = Length.FromMeters(0.6),
    };

    private static LightScene Scene(GroundBeside? ground, double up = -0.1, double size = 0.01) => new()
    {
        Panel = Sheet,
        Surround = new LightSurround { FloorReflectance = 0, OpenFloorMargin = Length.Zero, Ground = ground },
        Emitters = [Studio.Flash(x: 0.05, y: up, z: 0.25, size: size)],
    };

    /// <summary>Photons played in a room with its ground level and its sheet upright or leaning: so many that a ninth of the sheet is known to about 0.6 %.</summary>
    [Theory]
    [InlineData(0.6, 0.03, 0)]
    [InlineData(0.6, 0, 20)]
    [InlineData(0.1, 0.1, 0)]
    public void Light_behind_an_upright_sheet_comes_straight_and_from_the_ground_as_photons_do(double reflectance, double under, double lean)
    {
        var ground = Ground(reflectance, under, lean);
        var map = LightSolver.Solve(Scene(ground), new PanelGrid(12, 12));

        var played = PhotonsBehindASheet.Play(Sheet, ground, Scene(ground).Emitters[0].Centre, photons: 1_500_000, seed: 17);

        for (var row = 0; row < 3; row++)
        {
            for (var column = 0; column < 3; column++)
            {
                Mean(map, column, row).Should().BeApproximately(played[row, column], played[row, column] * 0.02, "in the part {0}, {1}", column, row);
            }
        }
    }

    [Fact]
    public void Grey_ground_adds_most_at_the_lower_edge_and_black_ground_nothing()
    {
        var bare = LightSolver.Solve(Scene(null), new PanelGrid(6, 6));
        var black = LightSolver.Solve(Scene(Ground(0)), new PanelGrid(6, 6));
        var grey = LightSolver.Solve(Scene(Ground(0.4)), new PanelGrid(6, 6));

        Studio.All(black).Should().Equal(Studio.All(bare));
        double[] added = [.. Enumerable.Range(0, 6).Select(row => grey.Exposure(3, row) - bare.Exposure(3, row))];
        added.Should().BeInDescendingOrder("the ground is further off further up").And.OnlyContain(light => light > 0);
    }

    [Fact]
    public void A_flash_in_the_ground_is_refused_by_how_far_it_is_in()
    {
        var problem = SceneCheck.Problems(Scene(Ground(0.1, under: 0.03), up: -0.27, size: 0.05)).Should().ContainSingle().Subject;

        problem.Kind.Should().Be(LightProblemKind.InsideFloor);
        problem.By!.Value.Millimeters.Should().BeApproximately(15, 1e-6, "270 + 25 mm under the middle, the ground 250 + 30 mm");
    }

    [Theory]
    [InlineData(1.0, 0.0, 0.0)]
    [InlineData(-0.1, 0.0, 0.0)]
    [InlineData(0.1, -0.01, 0.0)]
    [InlineData(0.1, 0.0, 85.0)]
    public void Ground_that_cannot_be_is_refused(double reflectance, double under, double lean) =>
        SceneCheck.Problems(Scene(Ground(reflectance, under, lean), up: 0)).Should().Contain(problem => problem.Kind == LightProblemKind.OutOfRange);

    [Theory]
    [InlineData(90, 0)]
    [InlineData(110, 0)]
    [InlineData(75, 0)]
    public void A_camera_before_an_upright_sheet_sees_the_patch_that_its_angle_of_view_cuts_out(double pitch, double roll)
    {
        var view = new CameraView
        {
            Name = "level",
            FieldWidth = Length.FromMillimeters(72),
            FieldHeight = Length.FromMillimeters(48),
            PupilDistance = Length.FromMillimeters(300),
            Pitch = Angle.FromDegrees(pitch),
            Roll = Angle.FromDegrees(roll),
            SubjectHeight = Length.FromMillimeters(200),
        };

        var patch = VisiblePatch.Of(Studio.Panel(width: 2, depth: 2), view);

        // Rays at ±atan(24/300) about the line of sight, from a pupil 200 + 300·sin(pitch) over the sheet: plane trigonometry.
        var (turn, half) = ((pitch - 90) * Math.PI / 180, Math.Atan2(24, 300));
        var (height, back) = (200 + (300 * Math.Cos(turn)), 300 * Math.Sin(turn));
        patch.Outline.Min(place => place.AlongSheet.Millimeters).Should().BeApproximately(1000 + back - (height * Math.Tan(turn + half)), 0.01);
        patch.Outline.Max(place => place.AlongSheet.Millimeters).Should().BeApproximately(1000 + back - (height * Math.Tan(turn - half)), 0.01);
    }

    [Fact]
    public void Of_a_sheet_that_another_stands_on_a_view_shows_and_needs_no_more_than_up_to_there()
    {
        var view = new CameraView
        {
            Name = "low",
            FieldWidth = Length.FromMillimeters(60),
            FieldHeight = Length.FromMillimeters(40),
            PupilDistance = Length.FromMillimeters(300),
            Pitch = Angle.FromDegrees(5),
            SubjectHeight = Length.FromMillimeters(10),
        };
        var ended = view with { EndsBehind = Length.FromMillimeters(120) };

        var needed = PanelCoverage.Smallest([ended], Length.FromMillimeters(20), Length.FromMeters(1), Length.FromMeters(1), Length.FromMeters(0.1));

        needed.NeedsSweep.Should().BeFalse();
        (needed.Depth - needed.SubjectFromFront).Millimeters.Should().BeApproximately(140, 1e-6, "120 mm to the other sheet and the margin");
        PanelCoverage.Smallest([view], Length.FromMillimeters(20), Length.FromMeters(1), Length.FromMeters(1), Length.FromMeters(0.1)).NeedsSweep.Should().BeTrue("alone it would have to rise behind the subject");
        VisiblePatch.Of(Studio.Panel(width: 1, depth: 1), ended).Outline.Should().OnlyContain(place => place.AlongSheet <= Length.FromMillimeters(620.001));
    }

    private static double Mean(LightMap map, int column, int row)
    {
        var cells = map.Grid.Columns / 3;
        return Enumerable.Range(0, cells * cells).Average(i => map.Exposure((column * cells) + (i % cells), (row * cells) + (i / cells)));
    }
}
