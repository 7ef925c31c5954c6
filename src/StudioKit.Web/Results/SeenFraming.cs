namespace StudioKit.Web.Results;

/// <summary>What one framing sees of the lit panel, at the power of its card.</summary>
/// <param name="Framing">Its name.</param>
/// <param name="Power">Power of the flash below, as its dial shows it.</param>
/// <param name="Usable">Whether the exposure works, if only at the edge.</param>
/// <param name="Outline">Outline round all that is seen at any camera angle.</param>
/// <param name="Darkest">Darkest visible point.</param>
/// <param name="Brightest">Brightest visible point.</param>
/// <param name="Margins">White margin of the map's points in stops, row by row from the front, each from left to right.</param>
/// <param name="Views">Each camera angle.</param>
public sealed record SeenFraming(
    string Framing, string Power, bool Usable, IReadOnlyList<Spot> Outline, MarginPoint Darkest, MarginPoint Brightest, IReadOnlyList<double> Margins, IReadOnlyList<SeenView> Views)
{
    /// <summary>What the margins mean, from the darkest band to the brightest.</summary>
    public IReadOnlyList<MarginBand> Bands { get; init; } = [];

    /// <summary>The dial of the flash below; none where there is none.</summary>
    public PowerDial? Dial { get; init; }

    /// <summary>What the margins come to, in a sentence.</summary>
    public string Comes { get; init; } = "";
}
