using StudioKit.Physics.Light;
using StudioKit.Planning.Studio.Lights;

namespace StudioKit.Planning.Tests.Panels;

public sealed class StudioLightTests
{
    [Fact]
    public void The_light_that_a_plan_keeps_is_that_of_its_scene_solved_alone_pipes_and_all()
    {
        var plan = KitText.Demo("fen-edge.yaml");
        var lit = plan.Light!.Of(plan.Kit.SetUps[0]);
        var alone = LightSolver.Solve(lit.Scene, lit.Map!.Grid);

        lit.Scene.Surround.Frame.Should().NotBeEmpty("the frame's pipes shade the panel");
        for (var row = 0; row < alone.Grid.Rows; row++)
        {
            for (var column = 0; column < alone.Grid.Columns; column++)
            {
                lit.Map.Exposure(column, row).Should().Be(alone.Exposure(column, row));
            }
        }
    }

    [Fact]
    public void Pieces_that_run_on_straight_are_one_pipe_whichever_end_comes_first_and_a_bend_parts_them()
    {
        var (foot, middle, top, corner) = (new Position(0, 0, 0), new Position(0, 0, 1), new Position(0, 0, 2), new Position(0.1, 0, 2));

        StraightRuns.Of([(foot, middle), (top, middle), (top, corner)]).Should().Equal((foot, top), (top, corner));
    }
}
