using StudioKit.Kits.SetUps;
using StudioKit.Physics;
using StudioKit.Physics.Exposure;
using StudioKit.Physics.Exposure.SetUps;
using StudioKit.Planning.Advising;

namespace StudioKit.Planning.Stations.OneWhite;

/// <summary>One station's way to the common white.</summary>
public sealed record StationWhite
{
    /// <summary>Name of its kit, with a number where the kit stands there several times.</summary>
    public required string Name { get; init; }

    /// <summary>What was measured of it.</summary>
    public required MeasuredStation Measured { get; init; }

    /// <summary>Power of the flash below that <see cref="TestedFrame.Darkest"/> was measured at.</summary>
    public DialMark MeasuredAt => new(Measured.Frame.Shot.Power, Measured.Exposure.Lights.First(light => light.Role.IsBackground()).PowerStep);

    /// <summary>Light against what its plan expects.</summary>
    public required Stops Gives { get; init; }

    /// <summary>Its margin as the card is set.</summary>
    public required WhiteLevel Before { get; init; }

    /// <summary>What to turn, with what a plan of that has; none where the kit has nothing that makes it white.</summary>
    public Advice? Advice { get; init; }

    /// <summary>Its margin once that is done; none without advice.</summary>
    public WhiteLevel? After { get; init; }

    /// <summary>Furthest from the common margin that would still count as within; none where the uncertainty is too large for that.</summary>
    public Stops? AcceptedTo { get; init; }

    /// <summary>What keeps it from the common margin; empty where it comes there.</summary>
    public ValueList<MissedLimit> Missed { get; init; } = [];

    /// <summary>Whether it comes as near to the common margin as the dial of its flash goes.</summary>
    public required bool Reaches { get; init; }

    /// <summary>What is decided about it; outside where nothing makes it white.</summary>
    public ConformityDecision Decision => After?.Decision ?? ConformityDecision.Outside;
}
