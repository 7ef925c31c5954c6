using StudioKit.Planning.Expected;
using UnitsNet;

namespace StudioKit.Field.Calibration;

/// <summary>One reading as it was noted in the field, before anything is made of it.</summary>
public sealed record FieldReading
{
    /// <summary>Where it stands, for whoever has to put it right: a file with a line.</summary>
    public required string Place { get; init; }

    /// <summary>How it is called in the report.</summary>
    public required string Name { get; init; }

    /// <summary>What was read.</summary>
    public required CalibrationReadingKind Kind { get; init; }

    /// <summary>Name of the flash; the flash below of the set-up where it is empty.</summary>
    public string Flash { get; init; } = "";

    /// <summary>Name of the set-up; the only one that uses the flash so where it is empty.</summary>
    public string SetUp { get; init; } = "";

    /// <summary>Name of the framing, which a reading off a picture needs; the only one of the set-up where it is empty.</summary>
    public string Framing { get; init; } = "";

    /// <summary>Camera pitch of a picture of the panel; the only one of the set-up where there is none.</summary>
    public Angle? Pitch { get; init; }

    /// <summary>What was set.</summary>
    public required ShotSettings Shot { get; init; }

    /// <summary>Reflectance of a card [1]; above 0, at most 1.</summary>
    public double Reflectance { get; init; } = 0.18;

    /// <summary>What was read: stops against 1 lx·s for a meter, stops above clipping for a picture [1].</summary>
    public required double Measured { get; init; }

    /// <summary>Day of the outing; none where the table does not say.</summary>
    public DateOnly? Date { get; init; }

    /// <summary>Standard uncertainty in stops [1]; &gt; 0.</summary>
    public required double Uncertainty { get; init; }
}
