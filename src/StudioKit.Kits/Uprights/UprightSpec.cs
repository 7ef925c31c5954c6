using StudioKit.Kits.Studio;
using UnitsNet;

namespace StudioKit.Kits.Uprights;

/// <summary>A translucent sheet that stands behind the subject, lit from behind.</summary>
public sealed record UprightSpec
{
    /// <summary>Name on the sheets; unique among the upright sheets.</summary>
    public required string Name { get; init; }

    /// <summary>What holds it.</summary>
    public UprightCarrier Carrier { get; init; }

    /// <summary>What the sheet is of; width, depth and margin are those below.</summary>
    public PanelSpec Sheet { get; init; } = new();

    /// <summary>Side across the camera's view; computed from the framings where the kit gives none.</summary>
    public Length? Width { get; init; }

    /// <summary>Side from its lower to its upper edge; computed from the framings where the kit gives none.</summary>
    public Length? Height { get; init; }

    /// <summary>Sheet kept beyond the visible field on every side.</summary>
    public Length Margin { get; init; } = Length.FromMillimeters(30);

    /// <summary>Lower edge over the ground, or over the panel where the frame carries it; as low as it goes where the kit gives none.</summary>
    public Length OverGround
    {
        get => GivenOverGround ?? LowestOver(Carrier);
        init => GivenOverGround = value;
    }

    // None where the kit says nothing, so that the two are told apart.
    private Length? GivenOverGround { get; init; }

    /// <summary>How far its top leans away from the camera, from upright.</summary>
    public Angle Lean { get; init; } = Angle.Zero;

    /// <summary>How deep a stake stands in the ground (common practice, no source).</summary>
    public Length StakeDepth { get; init; } = Length.FromCentimeters(20);

    /// <summary>What a stake holds, as a spring balance reads when it pulls the stake level, 30 cm over the ground, until it gives (common practice, no source).</summary>
    public Mass StakeHold { get; init; } = UnitsNet.Mass.FromKilograms(2);

    /// <summary>Length of each foot along the camera's view, the pole in its middle.</summary>
    public Length FootLength { get; init; } = Length.FromCentimeters(40);

    /// <summary>Mass laid on both feet together.</summary>
    public Mass Ballast { get; init; } = UnitsNet.Mass.Zero;

    /// <summary>Pegs that hold cords at 45° from its upper corners, half of them before and half behind the sheet.</summary>
    public int CordPegs { get; init; }

    /// <summary>What one of those pegs holds, as a spring balance reads when it pulls the peg out of the ground of the place.</summary>
    public Mass PegHold { get; init; } = UnitsNet.Mass.Zero;

    /// <summary>As low as a sheet usually goes: over feet that lie before and behind its poles, with their fittings, else on the ground or the panel (common practice, no source).</summary>
    /// <param name="carrier">What holds it.</param>
    public static Length LowestOver(UprightCarrier carrier) => carrier == UprightCarrier.Feet ? Length.FromCentimeters(4) : Length.Zero;

    /// <summary>The same as low as it goes.</summary>
    public UprightSpec Lowest() => this with { GivenOverGround = null };
}
