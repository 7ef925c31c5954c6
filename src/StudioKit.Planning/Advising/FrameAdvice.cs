using StudioKit.Physics;
using StudioKit.Physics.Exposure;

namespace StudioKit.Planning.Advising;

/// <summary>What a test frame says of the light against a plan, and what to turn.</summary>
/// <param name="Shot">The exposure as it was set, with the margins that the plan expects there and those that the frame shows where it shows any.</param>
/// <param name="Expected">Margin of the darkest visible place that the plan expects for what was set.</param>
/// <param name="Pieces">What to turn, least trouble first; each is planned with the light that the frame shows, is white all over and keeps to the veil limit. Empty where the frame does not tell, or nothing helps.</param>
public sealed record FrameAdvice(ExposurePlan Shot, Stops Expected, ValueList<Advice> Pieces)
{
    /// <summary>Light against what the plan expects, in every place; none where the frame is white all over.</summary>
    public Stops? Gives { get; init; }

    /// <summary>Stops by which the background is less even than planned, or at least is; 0 where it is as even. It is in the margins of the brightest place.</summary>
    public Stops LessEven { get; init; }

    /// <summary>Whether the frame lies further from the plan than any kit's figures are wrong, so that it was set otherwise than named.</summary>
    public bool IsSetOtherwise { get; init; }

    /// <summary>The first piece where nothing but dials are turned; none where there is none.</summary>
    public Advice? ByDial => Pieces.FirstOrDefault(piece => !piece.Changes.Any(change => change.IsDoneByHand));
}
