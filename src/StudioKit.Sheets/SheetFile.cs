namespace StudioKit.Sheets;

/// <summary>A finished file, not yet written anywhere.</summary>
/// <param name="Name">File name with its ending, the same for every kit.</param>
/// <param name="Content">The bytes.</param>
/// <param name="Problems">What did not fit on the paper and why; empty where all did.</param>
public sealed record SheetFile(string Name, ReadOnlyMemory<byte> Content, IReadOnlyList<string> Problems)
{
    /// <summary>Pages of a printed document [1]; nought for a drawing or a table.</summary>
    public int Pages { get; init; }

    /// <summary>Whether it is printed on both sides of the paper.</summary>
    public bool BothSides { get; init; }

    /// <summary>Sheets of paper that it takes [1].</summary>
    public int PaperSheets => BothSides ? (Pages + 1) / 2 : Pages;
}
