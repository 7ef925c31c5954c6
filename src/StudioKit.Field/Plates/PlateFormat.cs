namespace StudioKit.Field.Plates;

/// <summary>Paper of a plate, in millimetres.</summary>
public sealed record PlateFormat
{
    /// <summary>Width of the page [mm]; A4 where nothing is said.</summary>
    public double PageWidth { get; init; } = 210;

    /// <summary>Height of the page [mm].</summary>
    public double PageHeight { get; init; } = 297;

    /// <summary>Margin on every side [mm].</summary>
    public double Margin { get; init; } = 15;

    /// <summary>Pictures side by side [1]; ≥ 1.</summary>
    public int Columns { get; init; } = 2;

    /// <summary>Pictures one above the other [1]; ≥ 1.</summary>
    public int Rows { get; init; } = 3;

    /// <summary>White between neighbours [mm].</summary>
    public double Gap { get; init; } = 8;

    /// <summary>Height kept under each picture for its caption [mm].</summary>
    public double CaptionHeight { get; init; } = 16;
}
