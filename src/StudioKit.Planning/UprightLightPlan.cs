using StudioKit.Physics;
using StudioKit.Physics.Exposure;
using StudioKit.Physics.Light;
using StudioKit.Planning.Studio;
using StudioKit.Planning.Studio.Lights;
using UnitsNet;

namespace StudioKit.Planning;

/// <summary>Light on the upright sheet of one set-up.</summary>
/// <remarks>Places on the sheet count across from its middle, and along it from its lower edge.</remarks>
public sealed record UprightLightPlan
{
    /// <summary>Name of the set-up.</summary>
    public required string SetUp { get; init; }

    /// <summary>Name of the upright sheet.</summary>
    public required string Upright { get; init; }

    /// <summary>What is impossible about the geometry; nothing is worked out then.</summary>
    public ValueList<LightProblem> Problems { get; init; } = [];

    /// <summary>Width of the sheet.</summary>
    public required Length Width { get; init; }

    /// <summary>Height of the sheet, along it.</summary>
    public required Length Height { get; init; }

    /// <summary>Lower and upper edge in the side view, which counts from the subject's foot, and over the ground, or the panel where the frame carries the sheet.</summary>
    public required (SidePoint Lower, SidePoint Upper) Edges { get; init; }

    /// <summary>Height of the subject's foot in the side view.</summary>
    public required Length SubjectFoot { get; init; }

    /// <summary>Least margin wanted at the darkest visible point.</summary>
    public required Stops TargetMargin { get; init; }

    /// <summary>Where the flashes behind it stand.</summary>
    public required ValueList<FlashBehindPlan> Flashes { get; init; }

    /// <summary>Every framing that sees the sheet; empty where there are problems.</summary>
    public IReadOnlyList<FramingLightPlan> Framings { get; init; } = [];

    /// <summary>Name of the flash that a problem is about; none where it is about none.</summary>
    /// <param name="problem">One of the problems.</param>
    public string? FlashOf(LightProblem problem)
    {
        ArgumentNullException.ThrowIfNull(problem);
        return problem.Flash is { } number && number <= Flashes.Count ? Flashes[number - 1].Flash : null;
    }

    /// <summary>The framing that is hardest to serve: the one that sees the light at its most uneven.</summary>
    public FramingLightPlan? Hardest => Framings.MaxBy(framing => framing.Spread.Value);
}
