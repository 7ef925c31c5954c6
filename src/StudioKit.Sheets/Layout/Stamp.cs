namespace StudioKit.Sheets.Layout;

/// <summary>What every sheet says about where it came from.</summary>
/// <param name="KitName">The kit's name.</param>
/// <param name="ContentHash">Short hash of what the sheet was made from.</param>
/// <param name="Date">The date given by the caller; none where none was given.</param>
internal sealed record Stamp(string KitName, string ContentHash, DateOnly? Date)
{
    /// <summary>The date, or nothing.</summary>
    public string DateText => Date?.ToString("yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture) ?? "";

    /// <summary>Day of the measured corrections that the sheet was made with; none where the kit stands as written.</summary>
    public DateOnly? Corrected { get; init; }

    /// <summary>Content, with the day of its corrections where it has any.</summary>
    public string Content => Corrected is { } day
        ? string.Create(System.Globalization.CultureInfo.InvariantCulture, $"content {ContentHash}, corrected {day:yyyy-MM-dd}")
        : $"content {ContentHash}";

    /// <summary>Date and content, parted by commas.</summary>
    public string Origin => Date is null ? Content : $"{DateText}, {Content}";
}
