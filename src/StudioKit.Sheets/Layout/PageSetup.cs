using StudioKit.Sheets.Drawings;

namespace StudioKit.Sheets.Layout;

/// <summary>Paper, its orientation and its margins.</summary>
internal sealed record PageSetup(Paper Paper, bool Landscape = false)
{
    private const double Side = 18;
    private const double TopMargin = 22;
    private const double BottomMargin = 20;

    public double Width => Landscape ? Long : Short;

    public double Height => Landscape ? Short : Long;

    /// <summary>Where the text goes, between header and footer.</summary>
    public Bounds Body => new(Side, TopMargin, Width - Side, Height - BottomMargin);

    private double Short => Paper == Paper.Letter ? 8.5 * 25.4 : 210;

    private double Long => Paper == Paper.Letter ? 11 * 25.4 : 297;
}
