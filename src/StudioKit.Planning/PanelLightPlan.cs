using StudioKit.Physics.Exposure;
using StudioKit.Physics.Light;
using StudioKit.Planning.Studio;
using StudioKit.Planning.Studio.Lights;
using UnitsNet;

namespace StudioKit.Planning;

/// <summary>Light on the panel, or on an upright sheet, in one white-background set-up.</summary>
public sealed record PanelLightPlan
{
    /// <summary>Name of the set-up.</summary>
    public required string SetUp { get; init; }

    /// <summary>Name of the upright sheet that it is; none for the panel.</summary>
    public string? Upright { get; init; }

    /// <summary>What is impossible about the geometry; nothing is worked out then.</summary>
    public IReadOnlyList<LightProblem> Problems { get; init; } = [];

    /// <summary>Width of the panel.</summary>
    public required Length PanelWidth { get; init; }

    /// <summary>Depth of the panel along the sheet, sweep included.</summary>
    public required Length PanelDepth { get; init; }

    /// <summary>The part of it that is swept up.</summary>
    public required Length SweptLength { get; init; }

    /// <summary>The flat part of it, before the sweep.</summary>
    public Length FlatDepth => PanelDepth - SweptLength;

    /// <summary>Ground to the flat panel's underside.</summary>
    public required Length PanelHeight { get; init; }

    /// <summary>Whether skirts close the space under the panel.</summary>
    public required bool Skirts { get; init; }

    /// <summary>Where the subject's foot stands, from the front edge; it stands midway between left and right.</summary>
    public required Length SubjectFromFront { get; init; }

    /// <summary>Least margin wanted at the darkest visible point.</summary>
    public required Stops TargetMargin { get; init; }

    /// <summary>Where the flashes are fixed.</summary>
    public required IReadOnlyList<FlashBelowPlan> Flashes { get; init; }

    /// <summary>Where the sheet lies right over pipes of the frame, in whose shadow it stays dark whatever the power.</summary>
    public IReadOnlyList<CoveredStrip> Covered { get; init; } = [];

    /// <summary>Where the set-up's cover stands; none where it has none.</summary>
    public CoverFoot? Foot { get; init; }

    /// <summary>Whether a place of the sheet lies right over a pipe of the frame.</summary>
    /// <param name="place">The place.</param>
    public bool IsOverPipe(PanelPlace place) => Covered.Any(strip => strip.Holds(place));

    /// <summary>Every framing that sees the panel; empty where there are problems.</summary>
    public IReadOnlyList<FramingLightPlan> Framings { get; init; } = [];

    /// <summary>The framing that is hardest to serve: the one that sees the light at its most uneven.</summary>
    public FramingLightPlan? Hardest => Framings.MaxBy(framing => framing.Spread.Value);

    /// <summary>The studio in side view.</summary>
    public required StudioSection Section { get; init; }

    /// <summary>Limits of the theory that the reader must know.</summary>
    public IReadOnlyList<string> Caveats { get; init; } = [];

    /// <summary>Name of the flash that a problem is about; none where it is about none.</summary>
    /// <param name="problem">One of the problems.</param>
    public string? FlashOf(LightProblem problem)
    {
        ArgumentNullException.ThrowIfNull(problem);
        return problem.Flash is { } number && number <= Flashes.Count ? Flashes[number - 1].Flash : null;
    }
}
