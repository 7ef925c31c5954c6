namespace StudioKit.Sheets.Layout;

/// <summary>What every sheet says about where it came from.</summary>
/// <param name="KitName">The kit's name.</param>
/// <param name="ContentHash">Short hash of what the sheet was made from.</param>
/// <param name="Date">The date given by the caller; none where none was given.</param>
internal sealed record Stamp(string KitName, string ContentHash, DateOnly? Date)
{
    /// <summary>The date, or nothing.</summary>
    public string DateText => Date?.ToString("yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture) ?? "";

    /// <summary>Date and content, parted by commas.</summary>
    public string Origin => Date is null ? $"content {ContentHash}" : $"{DateText}, content {ContentHash}";
}
