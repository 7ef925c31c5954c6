using UnitsNet;

namespace StudioKit.Planning.Studio.Hardware;

/// <summary>A tool that is needed, one for however many studios.</summary>
/// <param name="Kind">Which.</param>
/// <param name="Count">How many [1].</param>
public sealed record ToolLine(ToolKind Kind, int Count = 1)
{
    /// <summary>Diameter of a bit, width of a spanner; none where no size is asked.</summary>
    public Length? Size { get; init; }

    /// <summary>Load that a spring balance must show; none of all else.</summary>
    public Mass? Load { get; init; }

    /// <summary>Mass of one, by its usual make; nought of what stays at home.</summary>
    public Mass MassEach { get; init; }

    /// <summary>Whether it is needed where the studio stands.</summary>
    public bool Travels => Kind is ToolKind.Spanner or ToolKind.Level or ToolKind.SpringBalance;
}
