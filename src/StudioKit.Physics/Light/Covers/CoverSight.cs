using StudioKit.Physics.Exposure;
using UnitsNet;

namespace StudioKit.Physics.Light.Covers;

/// <summary>What one view has between its lens and its subject, and behind it.</summary>
public sealed record CoverSight
{
    /// <summary>The part of the cover that the subject is seen through; none where the line of sight meets the water's edge, or no wall.</summary>
    public CoverFace? Face { get; init; }

    /// <summary>Angle of the line of sight from that part's normal.</summary>
    public Angle Incidence { get; init; }

    /// <summary>Light of the sheet lost on its way to the lens, where the frame's dimmest point loses it.</summary>
    public Stops SheetLoss { get; init; }

    /// <summary>The same where the frame loses least.</summary>
    public Stops LeastSheetLoss { get; init; }

    /// <summary>Light of the subject lost on its way to the lens, what water spreads counted.</summary>
    public Stops SubjectLoss { get; init; }

    /// <summary>Subject to that part's outside, as far as it seems to the lens.</summary>
    public Length SeemingDistance { get; init; }

    /// <summary>The same, as a rule measures it along the ray.</summary>
    public Length Distance { get; init; }

    /// <summary>Distance between the planes that are sharp for lines along and across the plane of incidence.</summary>
    public Length AstigmaticDifference { get; init; }

    /// <summary>Whether some of the wall's foot lies in the frame.</summary>
    public bool ShowsFoot { get; init; }

    /// <summary>Whether a tank's bottom turns the line of sight back, so that it shows no sheet.</summary>
    public bool BottomMirrors { get; init; }

    /// <summary>Share of the lit sheet's light that the part looked through throws to the lens over the subject [1]; 0 to 1.</summary>
    public double SheetMirrored { get; init; }
}
