namespace StudioKit.Physics.Structure.Checks;

/// <summary>A stretch of rail between the legs or posts that hold it.</summary>
/// <param name="Metres">Centre line [m].</param>
/// <param name="Labels">Labels of its pieces in order.</param>
internal sealed record RailSpan(double Metres, IReadOnlyList<string> Labels)
{
    public static RailSpan None { get; } = new(0, []);
}
