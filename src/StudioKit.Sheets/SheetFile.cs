namespace StudioKit.Sheets;

/// <summary>A finished file, not yet written anywhere.</summary>
/// <param name="Name">File name with its ending, the same for every kit.</param>
/// <param name="Content">The bytes.</param>
/// <param name="Problems">What did not fit on the paper and why; empty where all did.</param>
public sealed record SheetFile(string Name, ReadOnlyMemory<byte> Content, IReadOnlyList<string> Problems);
