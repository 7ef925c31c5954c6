using StudioKit.Physics.Structure;
using StudioKit.Physics.Structure.Frames;
using StudioKit.Physics.Tests.Structure.Frames;
using UnitsNet;

namespace StudioKit.Physics.Tests.Structure;

/// <summary>What the panel rests on is what its sag is checked for.</summary>
/// <remarks>Sheet of 400 × 700 mm, 3 mm of acrylic: D = 3.2 GPa·(3 mm)³/12(1 − 0.37²) = 8.342 N·m, own weight 1190·9.80665·0.003 = 35.01 Pa, subject 0.2 kg = 1.961 N.</remarks>
public sealed class PanelRestTests
{
    private static readonly FrameCase Deep = FrameCases.FenTable with { PanelWidth = Length.FromMillimeters(400), PanelDepth = Length.FromMillimeters(700) };

    /// <summary>As a beam 400 mm wide of EI = D(1 − ν²)·0.4 = 2.880 N·m²: 5·14.00·0.7⁴/(384·2.880) = 15.2 mm and 1.961·0.7³/(48·2.880) = 4.9 mm.</summary>
    /// <remarks>A strip four sevenths as wide as it is long is stiffer than a beam by less than ν² and droops at its edges by less still: 5 %.</remarks>
    [Fact]
    public void A_sheet_on_two_rails_sags_as_a_strip()
    {
        var sag = Sag(Deep with { Rests = PanelRests.FrontAndBack });

        sag.Should().BeApproximately(20.1, 0.05 * 20.1);
    }

    /// <summary>Timoshenko (1959), plates on four edges at b/a = 1.75: α of 0.00913 (between 0.00908 at 1.75 and its neighbours) and α_P of 0.0161.</summary>
    /// <remarks>0.00908·35.01·0.4⁴/8.342 = 0.98 mm and 0.0161·1.961·0.16/8.342 = 0.61 mm; the table is read between its columns, hence 2 %.</remarks>
    [Fact]
    public void A_sheet_on_four_edges_sags_as_a_plate() => Sag(Deep).Should().BeApproximately(0.98 + 0.61, 0.02 * 1.59);

    [Fact]
    public void Which_edges_rest_is_said_in_the_check()
    {
        Check(Deep).Caveats.Should().Contain(caveat => caveat.Kind == StructuralCaveatKind.SagWithEdgesHeld);
        Check(Deep with { Rests = PanelRests.FrontAndBack }).Caveats.Should().Contain(caveat => caveat.Kind == StructuralCaveatKind.RestsOnTwoEdges);
    }

    [Fact]
    public void Four_edges_are_claimed_only_where_strips_lie_under_four() => FrameCases.Any.Sample(design =>
    {
        if (PipeFrame.Obstacle(design) is not null)
        {
            return;
        }

        var frame = PipeFrame.Generate(design);
        var places = frame.Joints.ToDictionary(joint => joint.Label, joint => joint.Position, StringComparer.Ordinal);
        foreach (var rest in frame.Ledge.Rests)
        {
            var pipe = frame.Members.Single(member => member.Label == rest.Member);
            var sticksOut = pipe.CentreLine - pipe.TakeOffFrom - pipe.TakeOffTo - SocketOf(design, frame, pipe.From) - SocketOf(design, frame, pipe.To);
            rest.Length.Millimeters.Should().BeApproximately(sticksOut.Millimeters, 1e-6, "a strip lies on all of the pipe that shows");
            Between(places[pipe.From], places[pipe.To], rest.From).Should().BeTrue();
            Between(places[pipe.From], places[pipe.To], rest.To).Should().BeTrue();
        }

        double[] ups = [.. frame.Ledge.Rests.Where(rest => rest.Edge != PanelEdge.Top).SelectMany(rest => new[] { rest.From.Up, rest.To.Up })];
        ups.Should().OnlyContain(up => Math.Abs(up - ups[0]) < 1e-9, "strips of one thickness carry a flat sheet only at one height");
        var sides = frame.Ledge.Rests.Count(rest => rest.Edge is PanelEdge.Left or PanelEdge.Right);
        frame.Ledge.AllRound.Should().Be(sides >= 2 && frame.Ledge.Rests.Any(rest => rest.Edge == PanelEdge.Front) && frame.Ledge.Rests.Any(rest => rest.Edge == PanelEdge.Back));
        PipeFrame.Generate(design with { Rests = PanelRests.FrontAndBack }).Ledge.AllRound.Should().BeFalse();
    });

    [Fact]
    public void Behind_its_flat_part_a_swept_sheet_rests_on_no_side_rail()
    {
        var swept = PipeFrame.Generate(FrameCases.FenTable with { Shape = FrameShape.SweptTable, SweepRadius = Length.FromMillimeters(500) });

        swept.Ledge.AllRound.Should().BeTrue();
        swept.Ledge.Rests.Where(rest => rest.Edge is PanelEdge.Left or PanelEdge.Right).Should().OnlyContain(rest => rest.To.Back <= 0.2);
    }

    private static Length SocketOf(FrameCase design, FrameResult frame, string joint) => design.Fittings.Of(frame.Joints.Single(found => found.Label == joint).Kind).SocketDepth;

    private static bool Between(FramePoint from, FramePoint to, FramePoint at) => Math.Abs((at - from).Norm + (to - at).Norm - (to - from).Norm) < 1e-9;

    private static double Sag(FrameCase design) => Check(design).Demand.As(UnitsNet.Units.LengthUnit.Millimeter);

    private static StructuralCheck Check(FrameCase design) => StudioChecks.All(StudioCases.Fen with
    {
        Frame = PipeFrame.Generate(design),
        PanelWidth = design.PanelWidth,
        PanelDepth = design.PanelDepth,
    }).Single(check => check.Kind == StructuralCheckKind.PanelSag);
}
