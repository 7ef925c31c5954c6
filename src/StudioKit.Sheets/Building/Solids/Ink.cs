using StudioKit.Sheets.Drawings;

namespace StudioKit.Sheets.Building.Solids;

/// <summary>How a part is drawn.</summary>
/// <param name="Edge">Its outline.</param>
/// <param name="Face">What fills it.</param>
internal sealed record Ink(Stroke Edge, Fill Face)
{
    /// <summary>What stands already: thin and grey.</summary>
    public static Ink Standing { get; } = new(Stroke.Thin, Fill.LightGrey);

    /// <summary>What a step brings: heavy and white.</summary>
    public static Ink Added { get; } = new(new Stroke(0.55), Fill.White);

    /// <summary>A pipe in a view.</summary>
    public static Ink Pipe { get; } = new(new Stroke(0.25), Fill.White);

    /// <summary>A fitting in a view.</summary>
    public static Ink Fitting { get; } = new(new Stroke(0.25), Fill.LightGrey);

    /// <summary>A fitting that is pinned.</summary>
    public static Ink Pinned { get; } = new(new Stroke(0.25), Fill.Grey);
}
