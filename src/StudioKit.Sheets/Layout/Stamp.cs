namespace StudioKit.Sheets.Layout;

/// <summary>What every sheet says about where it came from.</summary>
/// <param name="KitName">The kit's name.</param>
/// <param name="ContentHash">Short hash of what the sheet was made from.</param>
/// <param name="Date">The date given by the caller.</param>
internal sealed record Stamp(string KitName, string ContentHash, DateOnly Date)
{
    public string DateText => Date.ToString("yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture);
}
