namespace StudioKit.Sheets.Layout;

/// <summary>Empty height, dropped at the foot of a page.</summary>
internal sealed record Spacer(double Height) : Block
{
    public override Fit Fit(double width, double height) => new(Math.Min(Height, height), []);
}
