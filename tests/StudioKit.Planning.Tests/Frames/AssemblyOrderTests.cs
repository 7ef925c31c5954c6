using StudioKit.Planning.Studio.Assembling;

namespace StudioKit.Planning.Tests.Frames;

public sealed class AssemblyOrderTests
{
    private static readonly Lazy<FramePlan> Table = new(() => PlannedKit.Of().Frame!);

    [Theory]
    [InlineData("kind: table", "skirts: yes")]
    [InlineData("kind: table; stretchers: always; longest-piece: 300 mm", "skirts: yes")]
    [InlineData("kind: table; insertion-gap: 2 mm; pegs: {count: 4, hold: 3 kg, guys: yes}", "skirts: no")]
    [InlineData("kind: swept-table", "sweep-radius: 1 m; sweep-angle: 30°")]
    [InlineData("kind: low-ground", "skirts: no")]
    public void Whoever_goes_by_the_steps_ends_with_the_whole_frame(string frame, string panel) =>
        AssemblyFaults.Of(PlannedKit.Of(frame: frame.Replace("; ", "\n  ", StringComparison.Ordinal), panel: panel.Replace("; ", "\n  ", StringComparison.Ordinal)).Frame!).Should().BeEmpty();

    // A socket of the leg that is told to point at the other side does: towards the middle of the frame.
    [Fact]
    public void Sockets_for_rails_across_point_to_the_other_side()
    {
        var frame = PlannedKit.Of(frame: "stretchers: always").Frame!;
        var across = frame.Assembly.OfType<AssemblyStep.PushAcross>().Single().Runs.SelectMany(run => new[] { run.Parts[0], run.Parts[^1] }).ToHashSet();

        var told = frame.Assembly.OfType<AssemblyStep.BuildLegs>().SelectMany(step => step.FreeSockets.Select(socket => (step.Side, Socket: socket)).Where(pair => pair.Socket.Direction is SocketDirection.Left or SocketDirection.Right)).ToList();

        told.Should().OnlyContain(pair => pair.Socket.Direction == (pair.Side == FrameSide.Left ? SocketDirection.Right : SocketDirection.Left));
        told.Select(pair => pair.Socket.Joint).Should().BeSubsetOf(across).And.HaveCountGreaterThan(4);
    }

    // Only a fitting that one straight line of pipe holds can be turned, and then its sockets are not where they belong.
    [Fact]
    public void A_fitting_that_is_drawn_turned_is_one_that_can_turn()
    {
        foreach (var step in Table.Value.Assembly)
        {
            foreach (var wrong in step.WrongWays.Where(wrong => wrong.Kind == WrongWayKind.Turned))
            {
                var joint = Table.Value.Geometry.Joints.Single(joint => joint.Label == wrong.Joint);
                var right = joint.Ports.Select(port => SocketDirections.Of(port.Direction)).ToList();
                wrong.Sockets.Should().NotBeEquivalentTo(right).And.HaveSameCount(right);
                step.FreeSockets.Should().Contain(socket => socket.Joint == wrong.Joint);
            }
        }

        Table.Value.Assembly.OfType<AssemblyStep.BuildLegs>().Should().OnlyContain(step => step.WrongWays.Any());
    }
}
