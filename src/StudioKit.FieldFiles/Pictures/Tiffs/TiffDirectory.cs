namespace StudioKit.FieldFiles.Pictures.Tiffs;

/// <summary>One directory of a TIFF: what it says of one picture.</summary>
/// <param name="Entries">Its fields by their tags.</param>
/// <param name="Next">Where the next directory begins; 0 after the last.</param>
internal sealed record TiffDirectory(IReadOnlyDictionary<ushort, TiffEntry> Entries, long Next);
