namespace StudioKit.Sheets.Layout;

/// <summary>One column of a table.</summary>
/// <param name="Title">Its head; numbers have their unit here or in every cell.</param>
/// <param name="Kind">How its cells stand.</param>
internal sealed record Column(string Title, ColumnKind Kind = ColumnKind.Text);
