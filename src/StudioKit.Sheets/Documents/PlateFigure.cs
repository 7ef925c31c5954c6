using StudioKit.Sheets.Drawings;

namespace StudioKit.Sheets.Documents;

/// <summary>One portrait on a plate, with everything that is printed about it.</summary>
public sealed record PlateFigure
{
    /// <summary>Where the picture is printed [mm].</summary>
    public required Bounds Place { get; init; }

    /// <summary>The picture, a JPEG file with its rows as they are seen.</summary>
    public required ReadOnlyMemory<byte> Jpeg { get; init; }

    /// <summary>Left edge of the caption [mm].</summary>
    public required double CaptionLeft { get; init; }

    /// <summary>Width of the caption with the scale bar [mm].</summary>
    public required double CaptionWidth { get; init; }

    /// <summary>Name of what is shown.</summary>
    public required string Name { get; init; }

    /// <summary>Whether the name is set in italics, save for its abbreviations.</summary>
    public required bool IsScientific { get; init; }

    /// <summary>Lines under the name.</summary>
    public required IReadOnlyList<string> Caption { get; init; }

    /// <summary>Length of the scale bar on paper [mm].</summary>
    public required double BarLength { get; init; }

    /// <summary>What the bar is in life, e.g. <c>5 mm</c>; empty where the picture has a bar of its own, so that none is printed.</summary>
    public required string BarLabel { get; init; }

    /// <summary>Size on paper over size in life, in words; empty where the page says it for all.</summary>
    public required string ScaleText { get; init; }
}
