namespace StudioKit.Sheets.Layout;

/// <summary>A block that is not split between pages, unless keeping it whole would leave most of a page empty.</summary>
internal sealed record KeepTogether(Block Inner) : Block
{
    // Some three fifths of a page.
    private const double MostLeftEmpty = 150;

    public override Fit Fit(double width, double height)
    {
        var whole = Inner.Fit(width, double.PositiveInfinity);
        return whole.Height <= height ? whole
            : height > MostLeftEmpty ? Inner.Fit(width, height)
            : Layout.Fit.Nothing(
                this, FormattableString.Invariant($"What must stay together needs {whole.Height:0} mm of height; there are {height:0} mm."));
    }
}
