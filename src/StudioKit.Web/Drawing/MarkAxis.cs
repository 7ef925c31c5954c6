using StudioKit.Web.Results;

namespace StudioKit.Web.Drawing;

/// <summary>How a value follows from the place of its mark in a drawing.</summary>
/// <param name="Key">Path of the value.</param>
/// <param name="Value">The value that the mark is drawn for.</param>
/// <param name="Least">The least it can be set to.</param>
/// <param name="Most">The most it can be set to.</param>
/// <param name="Step">What it is rounded to, and what one press of a key changes.</param>
/// <param name="X">What it gains a millimetre to the right.</param>
/// <param name="Y">What it gains a millimetre down.</param>
/// <param name="Pivot">Point that the mark turns about, where the value is an angle; none where it is a length.</param>
/// <param name="Origin">The value at the drawing's own origin.</param>
public sealed record MarkAxis(string Key, double Value, double Least, double Most, double Step, double X, double Y, Spot? Pivot = null, double Origin = 0)
{
    /// <summary>A length that grows along a direction of the drawing.</summary>
    public static MarkAxis Along(Handle handle, double x, double y) => new(handle.Key, handle.Value, handle.Least, handle.Most, handle.Step, x, y);

    /// <summary>An angle about a point.</summary>
    public static MarkAxis About(Handle handle, Spot pivot) => new(handle.Key, handle.Value, handle.Least, handle.Most, handle.Step, 0, 0, pivot);
}
