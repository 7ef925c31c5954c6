namespace StudioKit.Sheets.Layout;

/// <summary>Begins a new page.</summary>
internal sealed record PageBreak : Block
{
    public override Fit Fit(double width, double height) => new(0, []) { EndsPage = true };
}
