namespace StudioKit.FieldFiles.Metadata;

/// <summary>Tells what a block of text or text-like data speaks of, for a warning; the block is taken out whatever it is.</summary>
internal static class TextKind
{
    private static readonly (byte[] Word, TellingMetadata Kind)[] Words =
    [
        ([.. "GPSL"u8], TellingMetadata.Position),
        ([.. "SerialNumber"u8], TellingMetadata.SerialNumber),
        ([.. "OwnerName"u8], TellingMetadata.SerialNumber),
        ([.. "Thumbnail"u8], TellingMetadata.EmbeddedPicture),
    ];

    public static TellingMetadata Of(ReadOnlySpan<byte> data)
    {
        var found = data.Length > 0 ? TellingMetadata.Text : TellingMetadata.None;
        foreach (var (word, kind) in Words)
        {
            found |= data.IndexOf(word) >= 0 ? kind : TellingMetadata.None;
        }

        return found;
    }
}
