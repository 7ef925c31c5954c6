namespace StudioKit.Sheets.Drawings;

/// <summary>What a closed shape is filled with; there is no colour, so that every printer gives the same sheet.</summary>
public enum Fill
{
    /// <summary>Nothing: what lies beneath shows.</summary>
    None,

    /// <summary>White: hides what lies beneath.</summary>
    White,

    /// <summary>Light grey.</summary>
    LightGrey,

    /// <summary>Middle grey.</summary>
    Grey,

    /// <summary>Black.</summary>
    Black,

    /// <summary>Thin lines at 45°, 2 mm apart: cut material.</summary>
    Hatch,
}
