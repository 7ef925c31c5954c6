namespace StudioKit.Sheets.Layout;

/// <summary>A block that is never split between pages.</summary>
internal sealed record KeepTogether(Block Inner) : Block
{
    public override Fit Fit(double width, double height)
    {
        var whole = Inner.Fit(width, double.PositiveInfinity);
        return whole.Height <= height
            ? whole
            : Layout.Fit.Nothing(
                this, FormattableString.Invariant($"What must stay together needs {whole.Height:0} mm of height; there are {height:0} mm."));
    }
}
