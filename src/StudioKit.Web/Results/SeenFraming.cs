namespace StudioKit.Web.Results;

/// <summary>What one framing sees of the lit panel, at the power of its card.</summary>
/// <param name="Framing">Its name.</param>
/// <param name="Power">Power of the flash below, as its dial shows it.</param>
/// <param name="Usable">Whether the exposure works, if only at the edge.</param>
/// <param name="Darkest">Darkest visible point.</param>
/// <param name="Brightest">Brightest visible point.</param>
public sealed record SeenFraming(
    string Framing, string Power, bool Usable, MarginPoint Darkest, MarginPoint Brightest)
{
    /// <summary>What it sees, place by place; told of a plan's hardest framing and of a preview, and of others when they are asked for.</summary>
    public FramingMap? Map { get; init; }

    /// <summary>Camera angles that see the panel, each once, in degrees.</summary>
    public IReadOnlyList<double> Pitches { get; init; } = [];

    /// <summary>What the margins mean, from the darkest band to the brightest.</summary>
    public IReadOnlyList<MarginBand> Bands { get; init; } = [];

    /// <summary>The dial of the flash below; none where there is none.</summary>
    public PowerDial? Dial { get; init; }

    /// <summary>What the margins come to, in a sentence.</summary>
    public string Comes { get; init; } = "";
}
