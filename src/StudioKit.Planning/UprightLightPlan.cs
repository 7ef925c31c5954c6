using StudioKit.Physics;
using StudioKit.Physics.Light;
using StudioKit.Planning.Studio.Lights;
using UnitsNet;

namespace StudioKit.Planning;

/// <summary>Light on the upright sheet of one set-up.</summary>
public sealed record UprightLightPlan
{
    /// <summary>
    /// The sheet as a panel that lies on its back: its front edge is its lower one, and what is seen right behind the subject is where the subject stands on it. Its side view counts
    /// from the subject's foot, and over the ground, or the panel where the frame carries the sheet.
    /// </summary>
    public required PanelLightPlan Sheet { get; init; }

    /// <summary>Name of the set-up.</summary>
    public string SetUp => Sheet.SetUp;

    /// <summary>Name of the upright sheet.</summary>
    public string Upright => Sheet.Upright!;

    /// <summary>What is impossible about the geometry; nothing is worked out then.</summary>
    public IReadOnlyList<LightProblem> Problems => Sheet.Problems;

    /// <summary>Subject to sheet, level.</summary>
    public required Length FromSubject { get; init; }

    /// <summary>Whether the subject stands on the panel; else where it grows, over the ground.</summary>
    public required bool OnPanel { get; init; }

    /// <summary>Where the flashes behind it stand.</summary>
    public required ValueList<FlashBehindPlan> Flashes { get; init; }

    /// <summary>Name of the flash that a problem is about; none where it is about none.</summary>
    /// <param name="problem">One of the problems.</param>
    public string? FlashOf(LightProblem problem) => Sheet.FlashOf(problem);
}
