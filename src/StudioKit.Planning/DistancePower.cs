using StudioKit.Physics.Exposure;
using UnitsNet;

namespace StudioKit.Planning;

/// <summary>A distance and the power that gives the same exposure from there.</summary>
/// <param name="Distance">Distance of the flash.</param>
/// <param name="PowerMark">Power as one fraction, or why there is none.</param>
public sealed record DistancePower(Length Distance, string PowerMark)
{
    /// <summary>Whether it is the planned distance, to the nearest centimetre.</summary>
    public bool IsPlanned { get; init; }

    /// <summary>Power to set; none where no setting will do.</summary>
    public FlashPower? Power { get; init; }

    /// <summary>Step of the flash's power dial.</summary>
    public PowerStep PowerStep { get; init; }

    /// <summary>Power as the flash's dial shows it; none where no setting will do.</summary>
    public DialMark? Mark => Power is { } power ? new DialMark(power, PowerStep) : null;

    /// <summary>Share of full power that the same exposure asks for, before it is rounded to a click [1]; none where no setting will do.</summary>
    public double? ExactShare { get; init; }
}
