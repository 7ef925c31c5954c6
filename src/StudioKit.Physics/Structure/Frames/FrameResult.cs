using UnitsNet;

namespace StudioKit.Physics.Structure.Frames;

/// <summary>A frame as data: every fitting and pipe in its place.</summary>
/// <param name="Shape">Shape of the frame.</param>
/// <param name="Joints">The fittings.</param>
/// <param name="Members">The pipes.</param>
/// <param name="Feet">The feet; none where the rails lie on the ground.</param>
/// <param name="Ledge">What the panel rests on.</param>
/// <param name="Cradles">What carries each flash that was asked for, in that order.</param>
/// <param name="PanelHeight">Level ground to the flat panel's underside, as the frame gives it.</param>
/// <param name="SheetLength">Length of the sheet along the camera's view, sweep included.</param>
/// <param name="Problems">What stops the frame being built or packed.</param>
/// <param name="Caveats">What the builder should know.</param>
public sealed record FrameResult(
    FrameShape Shape,
    IReadOnlyList<FrameJoint> Joints,
    IReadOnlyList<FrameMember> Members,
    IReadOnlyList<FrameFoot> Feet,
    PanelLedge Ledge,
    IReadOnlyList<FlashCradle> Cradles,
    Length PanelHeight,
    Length SheetLength,
    IReadOnlyList<FrameProblem> Problems,
    IReadOnlyList<FrameCaveat> Caveats)
{
    /// <summary>Whether all its pipes go together as drawn, whatever flashes it does not carry.</summary>
    public bool GoesTogether => Problems.Count == 0;

    /// <summary>Flashes that it was to carry and does not [1]; those that lie on the ground under a low frame are not counted.</summary>
    public int Refused => Cradles.Count(cradle => cradle.Fault is { Kind: not CradleFaultKind.LowFrame });

    /// <summary>How many of each kind of fitting [1].</summary>
    public IReadOnlyDictionary<FittingKind, int> FittingCounts =>
        Joints.GroupBy(joint => joint.Kind).OrderBy(group => group.Key).ToDictionary(group => group.Key, group => group.Count());

    /// <summary>Pipe in the frame, cut pieces end to end.</summary>
    public Length PipeLength => Length.FromMeters(Members.Sum(member => member.CutLength.Meters));

    /// <summary>Foot to foot across the camera's view.</summary>
    public Length BaseWidth => Length.FromMeters(Span(point => point.Right));

    /// <summary>Foot to foot along the camera's view.</summary>
    public Length BaseDepth => Length.FromMeters(Span(point => point.Back));

    // Without feet the rails themselves stand on the ground.
    private double Span(Func<FramePoint, double> along)
    {
        var standing = Feet.Count > 0 ? Feet.Select(foot => foot.Position) : Joints.Select(joint => joint.Position);
        var places = standing.Select(along).ToList();
        return places.Max() - places.Min();
    }
}
