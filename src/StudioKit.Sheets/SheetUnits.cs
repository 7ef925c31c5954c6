namespace StudioKit.Sheets;

/// <summary>Units of the build sheet.</summary>
public enum SheetUnits
{
    /// <summary>Millimetres.</summary>
    Metric,

    /// <summary>Millimetres with inches beside them, to the nearest sixteenth.</summary>
    Both,
}
